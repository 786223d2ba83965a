# Words that rules of remarks speak of, by what they tell.

# ---- against guidance
@ LEAVING
leave
leaves
left
leaving
sit
sits
sat
sitting
stand
stands
stood
standing
keep
keeps
kept
stay
stays
@ RINSING
rinse
rinses
rinsed
rinsing
wash
washes
washed
washing
@ BASTING
brush
brushing
baste
basting
paint
painting
mop
mopping
spoon
spooning
drizzle
drizzling
pour
pouring
serve
serving
glaze
glazing
dip
dipping
splash
splashing
tip
tipping
toss
tossing
@ THAWING
thaw
thaws
thawed
thawing
defrost
defrosts
defrosted
defrosting
@ KITCHENTOP
counter
countertop
worktop
side
table
bench
stove
hob
windowsill
porch
step
@ STERILISING
sterilise
sterilising
sterilize
sterilizing
@ SCALDING
boil
boiling
process
processing
scald
scalding
heat
heating
@ JARWORD
jar
jars
lid
lids
bottle
bottles
@ FINEWORD
great
well
beautifully
lovely
perfectly
fine
ok
okay
good
alright
perfect
@ LONGSPAN
night
day
afternoon
@ LARDER
cupboard
pantry
shelf
counter
windowsill
months
@ SMIDGE
a bit
a little
a little bit
a touch
bit
little
touch
slightly
still
some
hint

# ---- served raw
@ RAWDISH
sashimi
ceviche
carpaccio
gravlax
@ SOFTSET
runny
still runny
liquid
jammy
still liquid
@ YOLKWORD
yolk
yolks
egg yolk
egg yolks
@ PATTYWORD
burger
burgers
patty
patties
@ EATING
eat
eaten
serve
served
serving
@ ATRISK
pregnant
pregnancy
immune
immunocompromised
toddlers
elderly
babies
vulnerable
pasteurised
pasteurized
pasteurised egg
pasteurized egg
pasteurised eggs
pasteurized eggs
undercooked

# ---- settings
@ SETTING
turn
turned
crank
bump
drop
lower
raise
reduce
increase
knock
take
bring
go
goes
going
heat
@ HEATING
in
on
cooking
simmering
baking
resting
chilling
there
out
that
for
@ HOLDING
hold
holds
held
keep
keeps
kept
stay
stays
for
@ INSIDEWORD
inside
middle
centre
center
thick
thickest
thickest part
fattest
deepest
meatiest
heart
core
@ COALWORD
coals
embers
hot coals
@ HOTWORD
hot
smoking
smoking hot
screaming
piping
roaring
@ PINKISH
pink
still pink
just pink
pink in the middle
pink in the centre
pink in the center
@ RAWYOLK
yolk is runny
yolks are runny
yolk is still runny
yolks are still runny
whites are set and yolks are runny
white is set and yolk is runny
whites are set but yolks are still runny

# ---- yields
@ THINKS
seen
watched
once
think
thinks
thought
reckon
reckons
says
claims

# ---- words for what was named before
@ SUMWORD
spice
spices
herbs
aromatics
vegetables
seasoning
seasonings
toppings
trimmings
@ MADEWORD
sauce
dressing
filling
topping
batter
dough
glaze
icing
frosting
marinade
rub
paste
stuffing
gravy
syrup
mixture
mix
drizzle
crumb
crust
coating
brine

# ---- people
@ SPEAKS
rang
said
says
told
called
taught

# ---- lists that are said aloud
@ LISTEND
everything
lot
list
shopping
shopping list
@ LISTOPEN
shopping list
pen
pencil
jot
@ NEEDWORD
need
needs
gather
