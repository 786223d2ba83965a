# Words that stand before, after or in place of a food's name and amount.

# What changes the purchase: printed with the food.
@ FOODMOD size
average-sized = average-size, average
big
bite-sized = bite-size
burger-sized
burrito-sized
chunky
egg-sized
extra-large = xl
extra-small
fairly large
family-sized = family-size, family
fat
fist-sized
full-sized = full-size
fun-sized = fun-size
giant
golf-ball-sized
good-sized = decent-sized, fair-sized
huge
jumbo
king-sized = king-size
large
large-ish = largeish
larger
largest
long
medium
medium-sized = medium-size
mini = miniature
oversized
plump
quite small
regular
regular-sized
short
slim
small
smaller
smallest
smallish = small-ish
snack-sized = snack-size
standard
taco-sized
thick
thin
thumb-sized = thumb-size
tiny
two-bite
very large
very small
walnut-sized

@ FOODMOD colour
bicolour = bicolor, two-tone
black
blue
brown
clear
coloured = colored
cream-coloured
dark green
deep red
golden
green
grey = gray
light-coloured = light-colored
mixed-colour = mixed-color, mixed-colored, mixed-coloured
multicoloured = multicolored, multi-coloured, multi-colored
orange
pale
pink
purple
rainbow
red
ruby
scarlet
tricolour = tricolor, tri-color, tri-colour
white
yellow

# Raw, cooked, left over: what was done before it came to the bench
@ FOODMOD state
baked
barbecued
blanched
blind-baked = prebaked, pre-baked
boiled
boiled and cooled
braised
brewed
browned
bruised
candied
caramelised = caramelized
chargrilled = char-grilled, charred
clarified
cold-pressed
concentrated
condensed
cooked
crisp
crystallised = crystallized, glacé
cultured
day-old
deep-fried
dry-roasted = dry-roast
evaporated
fermented
fire-roasted
firm
flame-grilled = flame-roasted
flash-frozen = quick-frozen, individually frozen
fresh-frozen
freshly baked
freshly brewed
freshly cooked
freshly cracked = fresh-cracked
freshly ground = fresh-ground
freshly made
freshly squeezed = fresh-squeezed, freshly pressed
fried
frozen
grilled
half-cooked
hard
hard-boiled = hardboiled, hard-cooked
home-grown = homegrown
homemade = home-made
hot
just-ripe = barely ripe, almost ripe
leftover = left-over
live
lukewarm = tepid
oven-roasted
overnight
overripe = over-ripe, very ripe
parboiled = par-boiled
part-baked = par-baked
part-cooked = par-cooked, parcooked
pasteurised = pasteurized
poached
popped
pre-boiled
pre-cut = precut, pre-chopped
pre-prepared
pre-rolled = ready-rolled
pre-shredded = pre-grated, ready-grated
pre-sliced = presliced, ready-sliced
pre-washed = prewashed, ready-washed
precooked = pre-cooked, ready-cooked, already cooked
prepared
puffed
pulled
raw
ready-made = readymade, ready-prepared
reconstituted
refrigerated = chilled, cold
rehydrated
ripe
roasted = roast
roasted and salted
rolled-out
room-temperature
rotisserie
slow-cooked
smoking
soft
soft-boiled
sourdough
spotty
sprouted
stale
steamed
steeped
stewed
stir-fried
strong-brewed
tender
thawed
toasted
two-day-old
unbaked
uncooked
underripe = under-ripe, unripe, not-too-ripe
unpasteurised = unpasteurized
untoasted
warm
wilted
wilting

# Kept, packed, cured
@ FOODMOD
active
african
aged = dry-aged
air-cured
air-dried
all-purpose
american = american-style
applewood-smoked = hickory-smoked, oak-smoked, maple-cured
aromatic
artisan = artisanal
asian = asian-style
assorted
autumn
baby
bagged
baking
barn
basic
battered
belgian
bendy
bitter
bittersweet
bleached
block
bone-in = on the bone
boneless = boned, deboned, off the bone
boneless skinless = skinless boneless, boneless and skinless, skinless and boneless
bony
boxed
braising
bread-making
breaded = crumbed
brined
broad-leaf
broken
brown-rice
brut
bulk
bunched
butterflied
buttery
cage-free
cajun
canadian
canned
cantonese
carbonated = fizzy
caribbean
center-cut = centre-cut
cheap
cheesy
chinese = chinese-style
chocolate-covered = chocolate-coated
choice
chopped
chunky-style
cleaned
cloudy
coarse
cold-smoked
cooking
corn-fed
corned
cornish
cracked
cracked-wheat
creamy
creole
crinkle-cut
crispy
crumbled
crunchy
crushed
crustless
crusty
cubed
cured
curly = curly-leaf
curly-edged
dairy-free = non-dairy
danish
dark
decaf = decaffeinated
dehydrated
desiccated
dessert
deveined
diced
diluted
dipping
domestic
double-acting
double-cooked
double-smoked
double-strength
dressed
dried
drinking
dry
dry-cured = dry-cure
dutch
early
easy-cook
eating
edible
egg-free
eggless
end-cut
english
enriched
european = european-style
expensive
extra-creamy
extra-fine = superfine, finely milled
extra-firm
extra-light
extra-mature = extra-sharp
extra-thick
extra-virgin
farmed = farm-raised
fast-action = fast-acting, rapid-rise, quick-rise
fat-free = non-fat, nonfat, zero-fat
fatty
filled
filleted
filtered
fine
finishing
first-cut
flaked
flat
flat-cut = point-cut
flat-leaf = flat-leaved
flavoured = flavored, vanilla-flavoured, lemon-flavoured
flavourless = flavorless, neutral
floury
fluffy
foraged
fork-tender
fragrant
free-flowing
free-range
freeze-dried
french = french-style
french-trimmed = frenched, french-cut
fresh
fresh-picked = freshly picked, just-picked
frosted
fruity
frying
full-bodied
full-fat = full-cream, whole-milk
garlicky
german
glazed
gluten-free
glutinous
good-quality = decent-quality, best-quality
grain-fed
granulated
grass-fed
grated
greek-style = greek
ground
gutted
halal
hand-dived
hard-to-find
hawaiian
heavy
heirloom = heritage
herbed
herby
high-gluten = high-protein
high-quality = top-quality
honey-roasted = honey-roast, honey-glazed
hot-smoked
hulled
hungarian
iced
imported
indian = indian-style
instant
irish
italian = italian-style
jamaican
japanese
jarred = bottled
juicy
kashmiri
keto
korean = korean-style
kosher
lactose-free
leafy
lean = extra-lean
lebanese
lemony
light
lightly salted = slightly salted
lightly smoked
lightly sweetened
line-caught
liquid
local
long-grain
long-life = uht, shelf-stable
long-stemmed = long-stem, tenderstem
loose
low-carb
low-fat = reduced-fat, lower-fat, half-fat, lite
low-moisture
low-sodium = reduced-sodium, no-salt-added, low-salt, reduced-salt, sodium-free, no-added-salt
main-crop = maincrop
maple-glazed
marinated
mashed
mature
meat-free = meatless
meaty
mediterranean = mediterranean-style
medium-dark
medium-dry
medium-firm
medium-grain
medium-hot
mellow
mexican = mexican-style
microwaveable = microwavable
middle eastern
mild
minced
mixed
moroccan
multigrain = multi-grain
natural
neat
new-season
nibbed
no-boil
no-cook
non-alcoholic = alcohol-free
non-organic
nonstick = non-stick
nut-free
nutty
off-dry
oil-cured
oil-packed = packed in oil
oily
old-fashioned
organic
oven-dried
oven-ready
packet = packaged
part-skim = part-skimmed
pasture-raised = pastured
pearled
peeled
peppered
peppery
persian
pickled
pin-boned
pitted = stoned, stone-in
plain
plant-based = plant
polish
portuguese
potted
powdered
premium
preserved
pressed
prime
puréed = pureed
quick-cooking = quick-cook, quick, fast-cooking
rare-breed
raw-milk
ready-to-bake
ready-to-eat
ready-to-roll
ready-to-use
refined
rich
rind-on
rindless = derinded
roasting
robust
rolled
rolled and tied
runny
salt-cured = salted and cured
salt-packed
salted
salty
savoury = savory
scottish
scrubbed
seasonal
seasoned
seeded
seedless = pipless
select
self-raising = self-rising
semi-dried
semi-skimmed = half-skimmed
semisweet = semi-sweet
set
sharp
shell-on = in the shell, head-on, unshelled, in-shell
shelled = shell-off, head-off
shop-bought = bought, supermarket
short-grain
shredded
shucked
sichuan = szechuan
sicilian
sieved
silken
single-origin
skimmed = skim
skin-on = with the skin on
skinless = skinned, skin-off
skinny
sliced
slivered
smoked
smoky
smooth
soft-wheat
solid
sour
spanish
sparkling
spatchcocked
spiced
spicy
sprayable
spring
squeezy
starchy
stewing
sticky
still
stone-ground = stoneground
store-bought = storebought, bought-in
store-brand = own-brand
straight
straight-cut
strained
streaky
strong
stuffed
sugar-coated
sugar-cured
summer
sun-dried = sundried
sushi-grade = sashimi-grade
sustainable = sustainably caught
sweet
sweetened
swiss
tail-off
tail-on = tails-on
tangy
tart
tenderised = tenderized
thai = thai-style
thick-cut = thick-sliced, thickly cut
thickened
thin-cut = thin-sliced, wafer-thin
thinly sliced
tied
tinned
tough
tree-ripened
trimmed
triple-cooked
turkish
tuscan
twice-cooked
two-percent = one percent
unblanched
unbleached
unbreaded
uncleaned
uncured
undiluted
unfilled
unfiltered
unflavoured = unflavored
unglazed
unhulled
unpeeled
unpitted
unrefined
unsalted
unseasoned
unsmoked
unspiced
unsweetened = no-sugar-added, sugar-free, no-added-sugar
unwashed
unwaxed
vacuum-packed = vac-packed
vanilla
vegan
vegetarian = veggie
vietnamese
vine-ripened = vine-ripe, on the vine
virgin
washed
water-packed = packed in water
waxed
waxy
wedge-cut
well-marbled = marbled
well-trimmed
welsh
wet
wheat-free
whipped
whole
wholegrain = whole-grain
wholemeal
wholewheat = whole-wheat
wide
wild
wild-caught
winter
yogurt-coated
young
zesty

# Words a recipe drops
@ FOODMOD vague
actual
amazing
awesome
bad boy
beautiful
beautiful big
beautiful fresh
beautiful little
best
big old = big ol', big ole
bog-standard
bright
brilliant
chunky old
classic
colourful = colorful
common
cool
cracking
cute
decadent
decent
deep
delicious
dinky
divine
dreamy
enormous
epic
everyday
excellent
fabulous
fancy
fantastic
favourite = favorite
fresh-looking
glorious
good
good old = good ol', good ole
gorgeous
great
handsome
healthy
heavenly
hefty
honest
humble
incredible
knobbly = wonky
little
little old
lovely
lovely big
lovely fresh
lovely little
luscious
luxurious
magical
magnificent
massive
moreish
nice
nice big
nice fresh
nice little
normal
nutritious
old
ordinary
perfect
plain old
poor
pretty
pretty little
proper
real
regular old
sad
scrumptious
secret
sexy
silky
simple
smashing
sorry-looking
special
stunning
superb
sweet little
tasty
teeny = teeny-tiny, teensy, itty-bitty
traditional
trusty
ugly
unctuous
usual
velvety
vibrant
wee
whacking great
whopping
wonderful
yummy
zingy

# What the cook does to it: printed after a comma.
@ PREPWORD
aerated
at room temperature = room temperature, at room temp
baked
bashed
bashed up
beards removed
beaten
blanched
blended
blitzed
bloomed
boiled
boned = deboned
bones removed
broken
broken into pieces
broken up
browned
bruised
bruised with a knife
brunoise = in a fine dice
brushed
buttered
butterflied
caramelised = caramelized
carved
casings removed = casing removed, skins off, removed from the casing, removed from casings
charred
chiffonade = cut in a chiffonade
chilled
chopped
chunked
clarified
cleaned
coarsely grated
cold
cold from the fridge
cooked
cooked and cooled
cooled
core removed
core scooped out
cored
cored and chopped
cored and peeled
cored and sliced
cracked
crosshatched = cross-hatched
crumbled
crushed
crushed to a paste = mashed to a paste
crushed to a powder
crusts removed = crust removed
cubed
cut into batons = in batons
cut into bite-sized pieces = cut into bite-size pieces, in bite-sized pieces
cut into chunks = in chunks
cut into cubes = in cubes
cut into fingers
cut into florets = broken into florets, in florets, separated into florets
cut into halves = cut in half, in half, cut in halves
cut into large chunks
cut into matchsticks = in matchsticks
cut into pieces = in pieces
cut into portions
cut into quarters = in quarters
cut into rings = in rings
cut into rounds = in rounds
cut into segments
cut into slices = in slices
cut into small cubes
cut into squares
cut into strips = in strips
cut into thin slices
cut into thin strips
cut into triangles
cut into wedges = in wedges
cut lengthwise = cut lengthways
cut on the bias = sliced on the diagonal, sliced on the bias, cut on the diagonal
cut up
dabbed dry
debearded
deep-fried
defrosted
deglazed
deseeded = seeded, de-seeded
deveined = de-veined
diced
diced small = small dice, small diced
diluted
dissolved
dissolved in water
divided
drained
drained and rinsed = rinsed and drained
dried
dried off
dried well
drizzled
dusted
ends snipped
ends trimmed = ends removed
fat trimmed = excess fat removed, trimmed of fat
filleted
finely chopped
finely diced
finely grated
finely minced
finely sliced
firmly packed
flaked
flattened
flesh scooped out
floured
folded
freshly grated
freshly ground = fresh ground
freshly squeezed
fried
glazed
grated
grated up
greased
green part only = green parts only, greens only
grilled
ground
gutted
halved
halved and pitted
halved and sliced
halved and stoned
halved lengthwise = halved lengthways
hard-boiled
heads removed
heaped = heaping
heated
hollowed out
hot
hulled
husked = husks removed
hydrated
ice-cold
in their skins = skins on, in its skin
infused
jointed
juice and zest = zest and juice
juice of
juice only
juiced
julienne
julienned
kept whole
kneaded
knocked back = punched down
leaves and stems separated
leaves picked = leaves only, picked leaves
leaves removed
leaves torn
left whole
levelled = leveled, level
lightly beaten
lined
loosely packed = lightly packed
marinated
mashed
melted
melted and cooled = cooled and melted
membrane removed = membranes removed
microwaved
minced
minced up
mixed with water
notched
nuked
oiled
opened out
packed
pat dry
patted dry
peeled
peeled and chopped
peeled and cored
peeled and crushed
peeled and cubed
peeled and deveined
peeled and diced
peeled and grated
peeled and minced
peeled and quartered
peeled and sliced
picked
picked over
pickled
pierced
piped
pith removed
pitted = stoned
poached
podded
portioned
pounded
powdered
pricked
processed
proved = proofed, proven
pulled apart
pulsed
puréed = pureed
quartered
reconstituted
reduced
rehydrated
reserved
rested
ribboned = cut into ribbons, shaved into ribbons
riced
rind cut off
rind removed
rinsed
risen
roasted
rolled
rolled out
rolled up
roughly chopped = coarsely chopped, chopped up, roughly cut
rubbed in
salted
sautéed = sauteed
scalded
scaled
scattered
scooped out
scored
scraped
scrubbed
scrubbed and debearded
seared
seasoned
seeded and chopped = deseeded and chopped
seeded and diced = deseeded and diced
seeds removed
seeds scraped = seeds scraped out
segmented
separated
separated into leaves
separated into rings
set aside
shaken dry = spun dry
shaved
shelled
shelled and deveined
shells removed
shredded
shucked
sieved
sifted
skimmed
skin removed = skins removed
skinned
slashed
sliced
sliced against the grain
sliced crosswise = sliced crossways
sliced into rings
sliced into rounds
sliced into strips
sliced lengthwise = sliced lengthways
slit
slivered
smashed
smashed up
smoked
snipped
soaked
soaked and drained
soaked in water
soaked overnight
softened
spatchcocked
spiralised = spiralized
split
split in half
split lengthwise = split lengthways
split open
spooned and levelled = spooned and leveled
spread
sprinkled
squeezed
squeezed dry = squeezed out, wrung out
stalks removed = stalk removed, stems removed, stem removed
steamed
steeped
stemmed = de-stemmed, destemmed
stirred
straight from the fridge
strained
stuffed
supremed
tailed
tails left on = tails on
tails removed
tempered
tenderised = tenderized
thawed
thawed and drained
thickened
thickly sliced
thinly sliced
tied
tied together = tied in a bundle
tightly packed
toasted
topped
topped and tailed
tops removed
torn
torn into pieces = torn into chunks
torn up
tough outer leaves removed = outer leaves removed, outer layer removed
trimmed
trimmed and halved
trimmed and sliced
trussed
unbeaten
uncooked
undrained
unpeeled
unsifted
very cold
very finely chopped
warm
warmed
washed
washed and chopped
washed and drained
washed and dried
wedged
well beaten
well drained
well packed
well rinsed
well shaken = shaken
whipped
whipped to soft peaks
whisked
white and green parts separated
white and light green parts only
white part only = white parts only, whites only
whole
wilted
with bones
with skin
with the bone in = bone in
with the skin on = skin on
with their juice = with juice, with juices, with their juices, in their juice, juice reserved
with their leaves = with leaves
zest of
zest only
zested

# How finely: before a PREPWORD
@ PREPADV
already
barely
briefly
carefully
chunkily
coarsely
completely
crosswise = crossways
crudely
deeply
diagonally
dry
evenly
ever so finely
fairly finely
fairly thinly
fine
finely
firmly
freshly
fully
generously
gently
halfway = half
hard
heavily
individually
just
just about
lengthwise = lengthways
lightly
loosely
neatly
newly
nice and finely
nice and roughly
nice and thinly
nicely
paper-thin
partially = partly, part
properly
quickly
quite finely
quite roughly
quite thinly
really finely
really thinly
really well
recently
rough
roughly
rustically
separately
shallowly
simply
slightly
small
smoothly
sparingly
super finely = superfinely
super thinly
thickly
thinly
thoroughly
tightly
very finely
very lightly
very roughly
very thinly
very well
wafer-thinly
well
widthways = widthwise

# Between the number and the unit: "two heaped tablespoons"
@ AMOUNTADJ
american = us
ample
australian
bare
beautiful
big
big old = big ol', great big
brimming
cheeky
chunky
couple of big
decent
dessert
double
enormous
entire
exact
extra
fair
fairly generous
fat
firmly packed
flat
full
generous = healthy
giant
good
good healthy
good old
great
half-empty
half-full
heaped = heaping
hearty
heavy
hefty
huge
imperial = british
just-under
kitchen
large
level = levelled, leveled
level measuring
liberal
light
lightly packed
little
long
loose
loosely packed
lovely
massive
meagre = meager
mean
measuring
medium
medium-sized
mere
metric
mini
modest
more
mounded
naughty
nice
nice big = lovely big, good big
normal
old-fashioned
ordinary
ordinary kitchen
overflowing
packed
piled
pretty generous
proper
real
really generous
regular
respectable
rough
rounded
scant
scanty
serving
short
single
skimpy
slight
small
sneaky
solid
standard
stingy
strong
thick
thin
three-finger
thumb-sized = thumb-size
tight
tightly packed
tiny
two-finger
very generous
walnut-sized
wee
whole

# Amounts without a number; "of" may follow
@ VAGUEUNIT noun
amount
armful
base
batch
bed
big handful
bit
blob
breath
buckets : mass
bunches : mass
chuck
chunk
clod
clump
coat
coating
couple
crack
crack or two
crumb
crumble
cupful
curl
dab
dash
daub
dollop
dose
dot
drench
dribble
drip
drizzle
drop
drop or two
droplet
dump
dusting
enough : mass
fair bit
few : mass
few drops : mass
film
fingerful
fistful
flake
fleck
flick
flourish
flurry
fold
glassful
glaze : ambiguous
glob
glug
glug or two
gob
good amount = decent amount, fair amount, generous amount, small amount, large amount, healthy amount
good bit
good few : mass
good handful
grain
grating
grind
grind or two
grinding
gulp
handful
heap
heaps : mass
helping
hint
hunk
kiss
knob
ladleful
lashing : mass
lashings : mass
layer
lick
little bit
little something
load
loads : mass
lot
lots : mass
lug
lump
masses : mass
measure
modicum
morsel
mound
mountains = mountain : mass
mouthful
nest
nibble
nip
nub
nubbin
nugget
oceans : mass
oodles : mass
palmful
pat
pawful
pile
pinch
plenty : mass
pool
portion
pour
puddle
quantity
reams : mass
ribbon
round
scatter
scattering
schmear = shmear
scoopful
scosh
scrap
scrape
scraping
serving
several : mass
shake
shaker
shaking
shard
share
shaving
shower
skim
skosh
slab
slather
slick
sliver
sloosh
slosh
slug
small handful
smear
smidge
smidgen = smidgeon, smidgin
snifter
snip
snipping
some : mass
soupçon
speck
splash
spoonful = spoon
spot
spray
sprinkle
sprinkling
spritz
squeeze
squirt
squish
stream
suggestion
swig
swirl
tad
tangle
tap
teeny bit = teeny tiny bit, tiny little bit, little tiny bit
thimbleful
thread
tiny bit
tons = ton, tonne : mass
tot
touch : plural=touches
trace
trickle
tuft
turn
twist
wallop
wee bit
whack
whiff
whisper
whole bunch
whole lot
wisp
wodge = wedge

# What the amount is for, or how free it is: printed after a comma or in brackets
@ PURPOSE
a few drops to taste
as needed = as required, as necessary, as much as you need
for acidity
for basting = to baste
for binding = to bind
for brushing = to brush, for brushing the top, to glaze, for glazing, for the glaze, for brushing over
for coating = to coat, for the coating, for dredging, for breading, for dredging the meat
for colour = for color, for a bit of colour
for crunch = for extra crunch, for texture
for decoration = to decorate, for decorating, as decoration, for the decoration
for deep frying = to deep-fry, for the fryer, for the deep fryer
for dipping = to dip, for dunking, to dunk
for drizzling = to drizzle, for a drizzle, for drizzling over, to drizzle over, for drizzling on top
for dusting = to dust, for the dusting, for dusting the top, for dusting the surface, for the work surface, for the worktop, for the bench, for the board, for dusting the work surface, for flouring the surface, for the counter
for filling = for the filling, to fill
for flavour = for flavor, for extra flavour, for extra flavor
for freshness
for frying = to fry, for shallow frying, for pan-frying, for sautéing, for sauteing, for the frying, to fry in, for frying in
for garnish = to garnish, for garnishing, as a garnish, as garnish, for the garnish
for good measure
for greasing = to grease, for oiling, for buttering, to butter, for the greasing
for heat = for extra heat, for a bit of heat, for a kick
for kneading = for shaping
for lining = to line
for luck
for marinating = to marinate, for the marinade
for moisture
for poaching = for blanching, for boiling, to boil, for cooking, to cook in, for cooking the pasta, for the pasta water, for steaming
for richness = for extra richness
for rolling = for rolling out, to roll out, to roll in, for rolling the dough, for rolling in
for rubbing = for the rub, to rub
for sealing = to seal
for shine
for soaking = to soak, for hydrating
for spreading = to spread
for sprinkling = to sprinkle, for sprinkling over, for sprinkling on top, to sprinkle over, for scattering, to scatter, to scatter over, for the sprinkle
for squeezing = to squeeze over, for squeezing over
for storage
for stuffing = for the stuffing
for sweetness = for a bit of sweetness
for the base
for the batter
for the broth = for the stock
for the crust
for the dough
for the egg wash = for egg wash
for the grill = for the barbecue, for oiling the grates, for the grates
for the icing = for the frosting
for the pan = for the skillet, for the griddle, for the wok, for the pot
for the salad
for the sauce
for the soup
for the table = for the kids, for the freezer, for later, for tomorrow, for next time
for thickening = to thicken
for topping = to top, for the top, for on top, on top, as a topping, to go on top, to top it off, for the topping
for tossing = for dressing, to dress, for the dressing
if available = if you have it, if you've got it, if you have some, if you've got some, if you can get it, if you can find it, if you can get some, if you can find some, if you have any, if you've got any
if desired = as desired, if so desired
if needed = if necessary, if required, if you need it, if you need to, only if needed
if using = if you're using it, if you're using them, if used
if you like = if you'd like, if you fancy, if you fancy it, if you want, if you want to, if you wish, if you so wish, if you like it, if you like that sort of thing, if you're into that, if you prefer, if you feel like it, if liked, if preferred
if you like heat = if you like it hot, if you like it spicy, if you like spice, if you like a kick, if you want heat
optional = which is optional, that's optional, totally optional, completely optional, this is optional, it's optional, but optional, entirely optional, but that's optional
plus more = plus extra, and a bit more, plus a bit more, plus a little extra, plus a little more, and then some
plus more for brushing = plus extra for brushing
plus more for drizzling = plus extra for drizzling, plus a drizzle, plus extra to drizzle
plus more for dusting = plus extra for dusting, and extra for dusting, and more for dusting
plus more for frying = plus extra for frying
plus more for garnish = plus extra for garnish, plus more to garnish, plus extra to garnish
plus more for greasing = plus extra for greasing, and extra for greasing, plus more for the pan, plus extra for the pan, plus extra for the tin, plus more for the tin
plus more for rolling = plus extra for rolling
plus more for sprinkling = plus extra for sprinkling, plus extra to sprinkle
plus more if needed = plus extra if needed, plus more as needed, or more if needed, or more as needed, more if needed, and more if needed, or as needed
plus more to serve = plus extra to serve, plus more for serving, plus extra for serving, and more to serve, and extra to serve
plus more to taste = plus extra to taste, or more to taste, and more to taste
to balance = to balance it out
to combine = to bring it together, to loosen, to thin, to thin it out, to let it down, to loosen it up, for loosening, to slacken
to cover = enough to cover, to just cover, just to cover, to submerge, to come up the sides
to deglaze = for deglazing
to finish = for finishing, to finish it off, to finish off, at the end
to grease the dish = for greasing the dish, to butter the dish, for the dish, for buttering the dish
to grease the pan = for greasing the pan, to butter the pan, for buttering the pan, for coating the pan, to coat the pan
to grease the tin = for greasing the tin, for the tin, to butter the tin, to line the tin, for lining the tin
to preserve = for preserving
to serve = for serving, to serve with, to serve with it, to serve alongside, for serving with, to eat with, to have with it, to go with it, on serving
to start with = to begin with
to taste = according to taste, to your taste, to your own taste, to suit your taste, as per taste, as per your taste, to season, for seasoning, for taste
to your liking = as you like, to your preference, as you prefer, however you like it
whatever you like = any you like, your choice, of your choice, of choice, whichever you like, your favourite, your favorite, whatever you have, whatever you've got, whatever you fancy, whatever you have on hand, any kind, of any kind, any type
