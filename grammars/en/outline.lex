# Words by which a host opens, turns and closes.

@ TODAY
today
tonight
today's = todays
tonight's = tonights
this morning
this afternoon
this evening
this week
this weekend
this episode
# What a cook begins with: "right, ..."; a border even without punctuation.
@ CALL
right
right then
okay = ok, 'kay
alright = all right, aight, alrighty, righto, righty, okey dokey, okie dokie
now
so
so now
now then
next
meanwhile
in the meantime
meantime
lastly
finally
then
and then
so then
well
anyway
oh
oh okay
ok so = okay so, alright so, all right so
yeah so
now so
and now
# What a cook does to a dish as a whole.
@ TURNVERB verb
make : past=made part=made
do : past=did part=done s=does
cook
bake
fry
grill
roast
prepare
prep
build : past=built part=built
tackle
whip up
knock up
knock together
rustle up
throw together : past=threw part=thrown
put together : past=put part=put ing=putting
show you : past=showed part=shown
teach you : past=taught part=taught
talk about
sort out
deal with : past=dealt part=dealt
see to : past=saw part=seen
work on
cover
@ STARTVERB verb
start with
start on
start off with
start out with
begin with : past=began part=begun ing=beginning
kick off with
open with
get started with : past=got part=got ing=getting
get started on : past=got part=got ing=getting
get going with : past=got part=got ing=getting
get going on : past=got part=got ing=getting
get cracking on : past=got part=got ing=getting
crack on with
jump into
dive into
@ NEXTVERB verb
move on to
move onto
move along to
get onto : past=got part=got ing=getting
get on to : past=got part=got ing=getting
get on with : past=got part=got ing=getting
get into : past=got part=got ing=getting
get stuck into : past=got part=got ing=getting
get cracking with : past=got part=got ing=getting
make a start on : past=made part=made
jump over to
jump to
carry on with
continue with
follow up with
come to : past=came part=come
switch to
turn to
head over to
finish with
finish off with
finish up with
go with : past=went part=gone
@ NEXTUP MARK
next up
next on the list
next job
next one
up next
first up
up first
first off
first job
first one
second one
last up
last one
last thing
last job
last of all
last but not least
final one
final dish
final thing
first of all
@ BACKTO
back to
back on
back over to
going back to
going back on
return to
returning to
check on
checking on
check back on
come back to
coming back to
look at
looking at
finish off
# Where a part's product goes, and what it goes on.
@ OVERWORD
over
on
onto
on top
on top of
all over
top
@ TOPWORD
top
tops
lot
both
sides
edges
# With an appliance: the cooking goes on.
@ HEATCALL
same
get
okay = ok, 'kay
alright
right
heat
preheat
# What is said of a thing that has had its time.
@ READYWORD
had
been
ready
done
cooked
out
rested
risen
cooled
cool
cold
chilled
set
doubled
baked
soaked
thickened
thickened up
reduced
simmered
simmering
bubbling
softened
browned
roasted
proved
proofed
marinated
finished
back
looking
smelling
coming
up
# To wish for a dish, to serve it.
@ WANTWORD
want
wants
wanted
fancy
fancied
craving
asked for
requested
@ LIKEWORD
like
love
serve
always
@ MAKEWORD
make
making
whip up
whipping up
knock up
mix up
mixing up
# Days and times that a dish gives its name to: "taco tuesday", "curry night".
@ DAYWORD noun
day
night
monday
tuesday
wednesday
thursday
friday
saturday
sunday
season
weather
party
time
morning
evening
afternoon
van
cart
drive
fete
sale
bake sale
fundraiser
stall
club
dinner party
# Courses that a name may follow: "for pudding, a trifle".
@ COURSE noun
main
main course
starter
pudding : ambiguous
dessert
afters : mass
sweet : ambiguous
breakfast
brunch
lunch
dinner
tea
supper
side
nibbles : mass
sweet tooth
# What a host counts the dishes by.
@ THINGWORD
things
recipes
dishes
ideas
suppers
dinners
treats
makes
bakes
snacks
sides
courses
projects
# Who eats.
@ EATER
people
persons
person
of us
of you
folks
adults
adult
grown-ups = grownups
guests
mouths
kids
children
teenagers
eaters
suppers
lunches
dinners
plates
bowls
big bowls
small bowls
big plates
servings
serving
portions
portion
helpings
friends
boys
girls
lads
family members
# What a dish is cut or counted into.
@ PIECE noun
square
slice
piece
round
ball
wedge
finger
portion
strip
triangle
bar
patty
jar
bottle
tub
# Other words of talk, which name no dish.
@ TALKWORD
alongside
least
longest
final
hardly
absolutely
stupid
famous
job
list
course
code
night
later
soon
tomorrow
yesterday
peace
bye
goodbye
hers
batch
new
total
hungry
easter
christmas
thanksgiving
@ TALKWORD noun
number
recipe
menu
version
episode
video
channel
show
program = programme
kitchen
truck
subscriber
comment
viewer
link
friend
grandma = gran, granny, nan, nana, grandmother, nanna
grandpa = granddad, grandad, grandfather
mum = mom, mother, mam, mama, mummy, mommy
dad = father, papa
brother
sister
aunt = auntie, aunty
uncle
cousin
husband
wife : plural=wives
neighbour = neighbor
son
daughter
kid
family
style
trick
secret
idea
question
thing
way
story
opinion
rule
treat
classic
favourite = favorite
comfort food : mass
one-pan = one pan
