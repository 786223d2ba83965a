-- SPDX-License-Identifier: ISC
-- The hits of a query here beside those of tamis find, whose JSON is on standard
-- input. psql, with the variables `asked` and `condition` (of the query).
\set ON_ERROR_STOP on
\set QUIET on
CREATE TEMP TABLE there (answer jsonb);
\copy there FROM pstdin WITH (FORMAT csv, QUOTE E'\x01', DELIMITER E'\x02')
CREATE TEMP TABLE theirs AS
SELECT hit->>'episode' AS episode, hit->>'dish' AS dish
FROM there, jsonb_array_elements(answer->'hits') AS hit;
CREATE TEMP TABLE ours AS SELECT episode, name AS dish FROM dish WHERE :condition;
\pset tuples_only on
\pset format unaligned
SELECT CASE WHEN missing + extra = 0 AND hits > 0 THEN 'same' ELSE 'DIFFERENT' END
       || ': ' || hits || ' hits: ' || :'asked'
       || CASE WHEN missing + extra > 0
          THEN ' (' || missing || ' only in tamis, ' || extra || ' only here)' ELSE '' END
FROM (SELECT (SELECT count(*) FROM theirs) AS hits,
             (SELECT count(*) FROM (TABLE theirs EXCEPT TABLE ours) t) AS missing,
             (SELECT count(*) FROM (TABLE ours EXCEPT TABLE theirs) t) AS extra) AS n;
