# The closed classes: marks, numbers, pronouns, auxiliaries, prepositions, and
# the small words of talk.

# ---- marks ---------------------------------------------------------------
@ COMMA
,
;
@ STOP
.
@ DOTS
...
@ COLON
: : COLON
@ DASH
-
@ SLASH
/
@ LPAR
(
[
@ RPAR
)
]
@ PERCENT
%
@ CURRENCY
$
rs
@ DEGREE
°
@ INCHMARK unit=inch
"
@ BREAK
<break>
@ VULGAR
<vulgar>

# ---- numbers -------------------------------------------------------------
@ ONES CARDWORD JOINS
one = wun : value=1
two : value=2
three : value=3
four : value=4
five : value=5
six : value=6
seven : value=7
eight : value=8
nine : value=9
@ ZERO
zero : value=0
@ TEENS CARDWORD JOINS
ten : value=10
eleven : value=11
twelve : value=12
thirteen : value=13
fourteen : value=14
fifteen : value=15
sixteen : value=16
seventeen : value=17
eighteen : value=18
nineteen : value=19
@ TENS CARDWORD JOINS
twenty : value=20
thirty : value=30
forty = fourty : value=40
fifty : value=50
sixty : value=60
seventy : value=70
eighty : value=80
ninety : value=90
@ HUNDRED JOINS
hundred : value=100 scales
@ THOUSAND JOINS
thousand : value=1000
@ DOZEN JOINS
dozen : value=12 scales noun
@ COUPLE JOINS
couple : value=2
@ HALF JOINS
half : value=1/2
halves : value=1/2
@ PARTWORD JOINS
quarter : value=1/4 noun
fourth : value=1/4 noun
third : value=1/3 noun
fifth : value=1/5 noun
sixth : value=1/6 noun
eighth : value=1/8 noun
tenth : value=1/10 noun
@ ORDINAL
first
second
third
fourth
fifth
sixth
seventh
eighth
ninth
tenth
last
next
other
nth
st
nd
rd
th

# ---- articles, pronouns, possessives --------------------------------------
@ ART JOINS
a
an
@ DET JOINS
the
this
that
these
those
my
your
our
his
her
their
its
@ QUANT
some
any
each
every
all
both
either
another
more
most
much
many
enough
no
other
same
whole
such
what
which
@ SUBJ
i
you
we
they
he
she
y'all = yall, ya'll
ya
people
everyone
everybody
somebody
someone
folks
nobody
chef
@ SUBJ PRON
it
@ PRON
this
that
these
those
them = 'em, em
him
her
us
me
everything
something
anything
nothing
one
ones
guy
guys
thing
things
stuff
bad boy
bad boys
fella
fellas
lot
mine
yours
ourselves
yourself
itself
themselves
each other

# ---- auxiliaries and clitics ----------------------------------------------
@ AUX
am
'm
are
're
is
's
was
were
be
been
being
do
does
did
have
've
has
had
'd
'll
will
would
can
could
shall
should
might
may
must
gonna = gon na, gunna
going
going to = goin to, go to
want to
wanna = wan na
need
need to
needs to
got to
gotta = got ta
have to
has to
going to want to
like to
love to
ought
ought to
used to
able to
about to
ready to
to
@ NEG
not
n't
never
don't = dont, do n't
doesn't = doesnt
won't = wont
can't = cant, cannot, can not
shouldn't = shouldnt
mustn't
without
no need to
rather than
instead of
avoid
nor
@ BE
is
'
's
are
're
was
were
be
been
being
am
'm
@ COND
if
unless
whether
@ WHEN
when
once
as soon as
after
before
while
whilst
until
till
til
'til
as
by the time
@ UNTIL
until
till
til
'til
@ BECAUSE
because
cause = cos, 'cause, coz
since
so that : unless=CLITIC|PASTBE
otherwise
that way
just in case
in case
depending on
although
though
even though
which means
@ REL
which
that
who
where
@ WH
what
why
how
who
whatever
whenever
wherever
however

# ---- prepositions and particles -------------------------------------------
@ PREP
in
into
on
onto
at
over
under
underneath
with
to
from
of
for
by
through
around
between
inside
outside
across
along
against
among
behind
beside
next to
on top of
in front of
out of
off
off of
round
per
within
without
during
like
than
except
besides
above
below
beneath
towards
toward
on to
in to
@ PLACEPREP
in
into
on
onto
over
under
around
inside
through
on top of
in to
on to
between
across
underneath
back in
back into
back on
back onto
@ PARTICLE
in
up
down
off
out
on
over
together
away
back
through
around
aside
apart
along
@ OF JOINS
of
@ TOWORD
to
@ WITH
with
@ FOR
for
@ LISTED
per
each
apiece
a piece : unless=OF

# ---- joining and marking ----------------------------------------------------
@ AND
and
plus
n
an'
@ OR
or
@ BUT
but
yet
@ MARK
now
then
next
first
firstly
first of all
second of all
secondly
thirdly
lastly
last
finally
meanwhile
in the meantime
meantime
after that
afterwards
afterward
from there
at this point
at that point
to start
to begin
to finish
so then
and then
so now
now then
once again
this time
while we wait
while you're at it = while we're at it, while i'm at it
@ FILLER
so
okay = ok, 'kay
right
well
alright = all right, aight
uh = er, um, umm, uhh, erm, hm, hmm, mm, mmm, ah, oh, ooh, aw
yeah = yep, yup, yes, yah
you know
i mean
kind of = kinda
sort of = sorta
basically
actually
obviously
literally
honestly
of course
essentially
pretty much
as you can see
as i said
like i said
like i say
as i say
you see
you guys
guys
folks
everyone
everybody
friends
here
there
anyway
anyways
by the way
look
listen
go ahead and
go on and
go and
come in and
just go ahead and
boom
bam
voila
simply
just
again
even
i suppose
i guess
i think
i reckon
i would say
i'd say
if you will
let's say
shall we say
please
mate
love
darling
bless
honey bun
so yeah
no worries
at the end of the day
for me
for us
real quick
really quick
real quickly
believe me
trust me
let me tell you
super simple
super easy
nice and easy
@ ADV
just
now
then
really
very
also
again
gently
slowly
quickly
carefully
lightly
well
quite
pretty
super
too
only
always
still
first
already
straight
straight away
right away
immediately
probably
maybe
simply
ever so
thoroughly
evenly
vigorously
constantly
continuously
continually
occasionally
frequently
regularly
briefly
gradually
loosely
tightly
firmly
generously
sparingly
liberally
completely
fully
halfway
separately
together
in half : unless=ART|OF|DET|UNIT
lengthways = lengthwise
crossways = crosswise
diagonally
properly
nicely
directly
every so often
from time to time
now and then
once in a while
a little
a bit
a little bit
a touch
one by one
one at a time
a bit at a time
a little at a time
in batches
all over
all around
all the way
as well
once more
actually
either
@ ADV MANNER
gently
slowly
quickly
carefully
lightly
thoroughly
evenly
vigorously
constantly
continuously
continually
occasionally
frequently
regularly
briefly
gradually
loosely
tightly
firmly
generously
sparingly
liberally
completely
fully
separately
together
in half : unless=ART|OF|DET|UNIT
lengthways = lengthwise
crossways = crosswise
diagonally
well
directly
immediately
straight away
one by one
one at a time
a bit at a time
a little at a time
in batches
every so often
from time to time
on both sides
on each side
on all sides
all over
partially
finely
thinly
thickly
roughly
coarsely
freshly
uncovered
covered
@ APPROX
about
around
roughly
approximately
approx
nearly
almost
maybe
say
something like
somewhere around
give or take
probably
like
ish
just over
just under
just about
close to
just shy of
shy of
not quite
a little over
a little under
a little more than
a little less than
a bit over
a bit under
a bit more than
a bit less than
a touch more than
a touch less than
a touch over
a touch under
just over
just under
# Between a measure and the same one in another unit: "350, that's 180 C".
@ RESTATES
call
so that : unless=CLITIC|PASTBE
fan
convection
that
's
is
it
which
so
or
i.e
ie
equals
/
(
[
=
# Softens the number before it, also inside: "five or so minutes".
@ ISH
ish
or so
odd
or thereabouts
# A full stop after one of these ends no sentence.
@ ABBREVIATION
tsp
tspn
tbsp
tbspn
tbs
tbl
lb
lbs
oz
pt
qt
gal
fl
kg
g
gm
gms
ml
mls
cl
dl
l
ltr
cm
mm
ft
hr
hrs
min
mins
sec
secs
pkg
pkt
pkgs
approx
deg
dsp
c
t
@ ORSO
or so
or thereabouts
give or take
ish
maybe
roughly
@ UPTO
up to
tops : after
max : after
maximum : after
at most : after
under : loose
less than
no more than
not more than
no longer than
not longer than
within : loose
@ ATLEAST
at least : after
minimum : after
good : article
no less than
not less than
over : loose
more than
a minimum of
@ ANOTHER
another
a further
an extra
an additional
@ MORE
more
longer
extra
@ SORRY
sorry
i'm sorry
no i'm sorry
oh i'm sorry
no no
no sorry
oh sorry
i mean
no
nope
wait
hang on
hold on
scratch that
correction
make that
rather
i'm lying
i lie
i tell a lie
tell a lie
my mistake
let me correct that
actually
should be
i should say
excuse me
pardon
pardon me
@ CLAIM
recipe
dish
meal
dinner
supper
lunch
tea
breakfast
whole thing
whole recipe
start to finish
from start to finish
on the table
all in
done in
ready in
# What is no part of a purpose of modifiers.lex.
@ OPTIONAL
if you want to
optionally
# A day or a week after one of these is a time of keeping, resting or curing.
@ KEEPING
aged
brine
chill
cool
cure
cured
develop
do
dried
dry
eat
every
ferment
fermented
fine
freeze
freezer
freezes
fridge
frozen
give
good
hang
happily
happy
infuse
keep
keeps
kept
last
lasts
leave
left
marinate
mature
need
needs
pickle
proof
prove
refrigerate
refrigerated
rest
salt
salted
sit
sits
soak
soaked
stand
steep
store
stored
up to
use
used
wait
wants
within
# "a minute" and "a second" after these are no times.
@ MOMENT
wait
hang on
hold on
give me
give us
back in
there in
got
take
took
last
any
every
this
@ INFINITE
overnight
@ HEATWORD
heat
flame
temp
temperature
setting
burner
@ SERVING
serving
portion
people
person
folks
of us
of you
guest
mouth
@ SERVING noun
serving
portion
guest
@ SERVES
serves
serve
feeds
feed
makes
make
yields
yield
gives
gives you
gets you
enough for
@ LISTED
side
sides

@ SUBJAUX
im
ive
youre
youll
weve
theyre
theyll
itll

# Food words that mean what is there already, unless an amount says otherwise.
@ GENERICFOOD noun
fat
meat
fish
fruit
vegetable
veg : mass
juice
skin
bone
flesh
seed
shell
liquid
mixture
filling
batter
dough
crust
crumb
base
pan juice
dripping
leftover
food
baby food
supper
sauce
dressing
marinade
brine
stuff
cake
bread
loaf
pea
nut
walnut
curd
starch
sugar syrup
yolk

# Words that tell what a stretch of time is for, where the verb does not.
@ TIMECUE noun
rack = wire rack, cooling rack, board, counter, worktop, countertop, colander, windowsill : action=rest
room temperature = room temp : action=rest
electric whisk = electric beater, hand mixer, stand mixer, electric mixer, hand beater : action=beat
fridge = refrigerator, icebox, cool box, chiller, fridges : action=chill
freezer : action=freeze
@ TIMECUE
rise = rises, rising, risen, proof, proofing, proofs, prove, proving, doubled, double, doubles, doubling, puffed up : action=prove
cool = cools, cooling, cool down, cooled : action=cool
rest = rests, resting : action=rest
sit = sits, sitting : action=rest
stand = stands, standing : action=rest
relax = relaxes : action=rest
release = natural release, natural pressure release, pressure go, pressure go down, pressure come down, pressure drop, pressure goes down, pressure comes down, pressure drops, pressure settle : action=rest
soak = soaks, soaking, soaked : action=soak
steep = steeps, steeping, infuse, infuses : action=soak
marinate = marinates, marinating, marinade, brine : action=marinate
set up = firm up, sets : action=set
simmer = simmers, simmering, tick, tick over, tick away, ticking, bubble away, bubbles, bubbling away, gentle bubble, bubbling, blip, blipping, putter : action=simmer
whistle = whistles : action=pressure-cook

# What is said as one with the word before it; "so that's" is "so, that is".
@ CLITIC
's
're
'll
'd
've

@ PASTBE
was
were

# Words that end no sentence: a full stop after one is a caption's slip.
@ NOEND
of
a
an
the
for
with
and
from
about
your
my
our
than
until
till
an
at
around
into

# Words that nobody pauses after: a comma after one is a caption's slip.
@ NOPAUSE
of
a
an
the
your
my
our
than
into

# What is done now runs beside what was done before.
@ BESIDE
meanwhile
in the meantime
meantime
at the same time
while
whilst

# Words of talk that part one thing from the next.
@ BOUNDARY
okay = ok
alright = all right
so
now
anyway = anyways
right
and then
and so
after that
meanwhile

# What happened once is no instruction.
@ PASTTIME
once upon a time
last week
last time
last year
last month
last sunday
last thanksgiving
yesterday
one time = 1 time
years ago
when i was
used to
ago
i remember when
the other day
in my life

@ MANNER ADV
skin side up = skin-side up, skin up
skin side down = skin-side down, skin down
cut side up = cut-side up
cut side down = cut-side down
seam side down = seam-side down
fat side up = fat-side up
fat side down = fat-side down
face down
face up
flat side down
in one layer = in a single layer, single layer

# Things about food that an object may be, besides foods and tools.
@ THING noun
fingertip
hand
forearm
fist
excess : mass
back
top
bottom
side
edge
middle
centre = center
surface
rest
half : plural=halves
mixture
lid
heat : mass
end
tip
skin
piece
lump
bit
cavity
well
cross
slit
hole
round
ball
circle
rectangle
layer
batch
ingredient
liquid
foam
scum
grit
stone
core
stem
root
green
white
bone
fat
grease
sheet
log
disc
square
strip
coil
inside
outside
seam
marinade
brine
wet ingredient
dry ingredient
dry
wet
glaze
crumb
crust
base
steam
oven door
gap
rim
corner
whole thing
lot
bird
joint
clove
peel
water
sugar
oil
salt

# Verbs that make a sentence alone: "Stir."
@ ALONE
stir
toss
mix
whisk
fold
knead
beat
blend
combine
shake
drain
rinse
season
taste
flip
turn
cover
serve
stir well

# People whose cooking is not this recipe's.
@ PERSON noun
mom
mum
mother
mama
dad
father
nan = my nan, your nan, our nan, his nan, her nan
nana
gran
granny
grandma
grandmother
grandpa
grandfather
grandad
brother
sister
uncle
aunt
auntie
cousin
husband
wife
partner
son
daughter
kid
child : plural=children
friend
buddy
neighbour = neighbor
boss
teacher
chef
lady : plural=ladies
man : plural=men
woman : plural=women
girl
boy
guy
fella
in-law
sister-in-law
brother-in-law
mother-in-law
sister in law
brother in law
mother in law
butcher
baker
fishmonger
doctor
everybody
everyone
someone
somebody
nobody
people
family
restaurant
roommate
viewer

@ THIRD
he
she

# Verbs that say nothing a reader must do.
@ IDLE
eat
drink
buy
count
hold
check
look
feel
wait
work
try
watch
smell
hear
feed
break
drop
wake
tell
find
remember
