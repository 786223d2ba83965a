-- SPDX-License-Identifier: ISC
-- Loads the JSON Lines of `tamis archive export` and makes them searchable: one
-- row a dish, its words weighed by where they stand, its measures and
-- ingredients as rows for range queries. psql, with the variable `lines`.
\set ON_ERROR_STOP on
\timing on

CREATE TABLE line (doc jsonb NOT NULL);
-- No line holds these control characters: JSON writes them otherwise.
\copy line FROM pstdin WITH (FORMAT csv, QUOTE E'\x01', DELIMITER E'\x02')

CREATE TABLE dish AS
SELECT row_number() OVER () AS id,
       doc->>'episode' AS episode,
       (doc->>'date')::date AS date,
       doc->>'name' AS name,
       ARRAY(SELECT jsonb_array_elements_text(doc->'allergens')) AS allergens,
       (doc->'time'->>'total_s')::numeric AS total_s,
       doc
FROM line;
ALTER TABLE dish ADD PRIMARY KEY (id);

CREATE FUNCTION all_text(doc jsonb, path jsonpath) RETURNS text
LANGUAGE sql IMMUTABLE AS $$
  SELECT coalesce(string_agg(v #>> '{}', E'\n'), '')
  FROM jsonb_path_query(doc, path) AS v WHERE jsonb_typeof(v) = 'string'
$$;

ALTER TABLE dish ADD COLUMN food tsvector;
ALTER TABLE dish ADD COLUMN words tsvector;
UPDATE dish SET food = to_tsvector('english',
  all_text(doc, '$.parts[*].ingredients[*].item') || E'\n' ||
  all_text(doc, '$.parts[*].ingredients[*].key') || E'\n' ||
  all_text(doc, '$.parts[*].ingredients[*].kind') || E'\n' ||
  all_text(doc, '$.parts[*].ingredients[*].group') || E'\n' ||
  all_text(doc, '$.parts[*].ingredients[*].alternatives[*].item'));
UPDATE dish SET words =
  setweight(to_tsvector('english', coalesce(name, '') || E'\n' ||
    all_text(doc, '$.parts[*].name')), 'A') ||
  setweight(food, 'B') ||
  setweight(to_tsvector('english', all_text(doc, '$.equipment[*].item') || E'\n' ||
    all_text(doc, '$.parts[*].steps[*].action') || E'\n' ||
    all_text(doc, '$.parts[*].steps[*].text')), 'C') ||
  setweight(to_tsvector('english', all_text(doc, '$.said[*].text') || E'\n' ||
    coalesce(doc->>'title', '')), 'D');
CREATE INDEX ON dish USING gin (words);
CREATE INDEX ON dish USING gin (food);

CREATE TABLE measure AS
SELECT d.id AS dish, m->>'kind' AS kind, m->>'role' AS role,
       (m->'range'->>0)::numeric AS low, (m->'range'->>1)::numeric AS high
FROM dish d, jsonb_array_elements(d.doc->'measures') AS m
WHERE jsonb_typeof(m->'range') = 'array';
CREATE INDEX ON measure (dish, kind);

CREATE TABLE ingredient AS
SELECT d.id AS dish, to_tsvector('english', concat_ws(' ', i->>'item', i->>'key',
         i->>'kind', i->>'group')) AS words,
       (i->'gram'->>0)::numeric AS gram_low, (i->'gram'->>1)::numeric AS gram_high,
       (i->'ml'->>0)::numeric AS ml_low, (i->'ml'->>1)::numeric AS ml_high
FROM dish d, jsonb_path_query(d.doc, '$.parts[*].ingredients[*]') AS i;
CREATE INDEX ON ingredient (dish);
ANALYZE;
