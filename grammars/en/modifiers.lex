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
family-sized = family-size
fist-sized
full-sized = full-size
fun-sized = fun-size
giant
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
tricolour = tricolor, tri-color, tri-colour
white
yellow

# Raw, cooked, left over: what was done before it came to the bench
@ FOODMOD
baked
barbecued
blind-baked = prebaked, pre-baked
boiled
braised
brewed
candied
chargrilled = char-grilled, charred
clarified
cold
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
lukewarm = tepid
oven-roasted
overripe = over-ripe, very ripe
parboiled = par-boiled
part-baked = par-baked
part-cooked = par-cooked, parcooked
pasteurised = pasteurized
poached
popped
pre-cut = precut, pre-chopped
pre-prepared
pre-rolled = ready-rolled
pre-shredded = pre-grated, ready-grated
pre-sliced = presliced, ready-sliced
pre-washed = prewashed, ready-washed
precooked = pre-cooked, ready-cooked
puffed
raw
ready-made = readymade, ready-prepared
refrigerated = chilled
rehydrated
ripe
roasted = roast
roasted and salted
room-temperature
rotisserie
slow-cooked
soft
soft-boiled
sprouted
stale
steamed
stewed
stir-fried
tender
two-day-old
unbaked
uncooked
underripe = under-ripe, unripe, not-too-ripe
unpasteurised = unpasteurized
untoasted
warm

# Kept, packed, cured
@ FOODMOD
active
african
aged = dry-aged
air-cured
air-dried
american = american-style
applewood-smoked = hickory-smoked, oak-smoked, maple-cured
aromatic
artisan = artisanal
asian = asian-style
assorted
baby
bagged
belgian
bendy
bitter
bittersweet
bleached
bone-in = on the bone
boneless = boned, deboned
boneless skinless = skinless boneless, boneless and skinless, skinless and boneless
boxed
breaded = crumbed
brined
broad-leaf
brut
bulk
bunched
buttery
cage-free
cajun
canadian
canned
cantonese
carbonated = fizzy
caribbean
center-cut = centre-cut
cheesy
chinese = chinese-style
chocolate-covered = chocolate-coated
chunky-style
cloudy
coarse
cold-smoked
corn-fed
corned
cornish
creamy
creole
crinkle-cut
crispy
crunchy
crustless
crusty
cured
curly = curly-leaf
curly-edged
dairy-free = non-dairy
danish
dark
decaf = decaffeinated
dehydrated
desiccated
diluted
double-acting
double-cooked
double-smoked
double-strength
dried
dry
dry-cured = dry-cure
dutch
easy-cook
edible
egg-free
eggless
english
enriched
european = european-style
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
filtered
fine
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
fruity
full-bodied
full-fat = full-cream
garlicky
german
gluten-free
glutinous
good-quality = decent-quality, best-quality
grain-fed
granulated
grass-fed
greek-style = greek
ground
halal
hand-dived
hawaiian
heavy
heirloom = heritage
herbed
herby
high-gluten = high-protein
high-quality = top-quality
honey-roasted = honey-roast, honey-glazed
hot-smoked
hungarian
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
long-grain
long-life = uht, shelf-stable
long-stemmed = long-stem, tenderstem
low-carb
low-fat = reduced-fat, lower-fat, half-fat, lite
low-moisture
low-sodium = reduced-sodium, no-salt-added, low-salt, reduced-salt, sodium-free, no-added-salt
main-crop = maincrop
maple-glazed
marinated
mature
meat-free = meatless
meaty
mediterranean = mediterranean-style
medium-dry
medium-firm
medium-grain
medium-hot
mellow
mexican = mexican-style
microwaveable = microwavable
middle eastern
mild
mixed
moroccan
multigrain = multi-grain
natural
new-season
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
peppered
peppery
persian
pickled
plain
plant-based
polish
portuguese
potted
powdered
premium
preserved
prime
quick-cooking = quick-cook, quick, fast-cooking
rare-breed
refined
rich
rind-on
rindless = derinded
robust
rolled
salt-cured = salted and cured
salt-packed
salted
salty
savoury = savory
scottish
seasonal
seedless = pipless
self-raising = self-rising
semi-dried
semi-skimmed = half-skimmed
semisweet = semi-sweet
sharp
shell-on = in the shell, head-on, unshelled
shop-bought
short-grain
sichuan = szechuan
sicilian
silken
single-origin
skimmed = skim
skin-on = with the skin on
skinless = skinned, skin-off
skinny
smoked
smoky
smooth
solid
sour
spanish
sparkling
spiced
spicy
squeezy
starchy
sticky
stone-ground = stoneground
store-bought = storebought
store-brand = own-brand
straight-cut
streaky
strong
sugar-coated
sugar-cured
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
thin-cut = thin-sliced, wafer-thin
tinned
tree-ripened
triple-cooked
turkish
tuscan
twice-cooked
two-percent = one percent
unblanched
unbleached
unbreaded
uncured
undiluted
unfiltered
unflavoured = unflavored
unhulled
unpeeled
unpitted
unrefined
unsalted
unseasoned
unsmoked
unspiced
unsweetened = no-sugar-added, sugar-free, no-added-sugar
unwaxed
vacuum-packed = vac-packed
vegan
vegetarian
vietnamese
vine-ripened = vine-ripe, on the vine
virgin
water-packed = packed in water
waxed
waxy
wedge-cut
well-marbled = marbled
well-trimmed
welsh
wet
wheat-free
whole
wholegrain = whole-grain
wholemeal
wholewheat = whole-wheat
wide
wild
wild-caught
yogurt-coated
young
zesty

# Words a recipe drops
@ FOODMOD vague
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
cute
decadent
decent
delicious
dinky
divine
dreamy
enormous
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
magnificent
massive
moreish
nice
nice big
nice fresh
nice little
normal
nutritious
ordinary
perfect
plain old
pretty little
proper
regular old
scrumptious
sexy
silky
sorry-looking
stunning
superb
sweet little
tasty
teeny = teeny-tiny, teensy, itty-bitty
traditional
trusty
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
at room temperature = room temperature, at room temp
baked
bashed
beards removed
beaten
blanched
blended
blitzed
bloomed
boiled
boned = deboned
bones removed
browned
bruised
bruised with a knife
brunoise
butterflied
caramelised = caramelized
carved
casings removed = casing removed, skins off, removed from the casing, removed from casings
charred
chiffonade
chilled
chopped
chunked
clarified
cleaned
cold from the fridge
cooked
cooled
core removed
core scooped out
cored
cracked
crosshatched = cross-hatched
crumbled
crushed
crusts removed = crust removed
cubed
debearded
deep-fried
defrosted
deseeded = seeded, de-seeded
deveined = de-veined
diced
dissolved
divided
drained
dried
ends snipped
ends trimmed = ends removed
fat trimmed = excess fat removed, trimmed of fat
filleted
flaked
flattened
flesh scooped out
fried
grated
green part only = green parts only, greens only
grilled
ground
gutted
halved
hard-boiled
heads removed
heaped = heaping
hulled
husked = husks removed
hydrated
ice-cold
in their skins = skins on
jointed
juice only
juiced
julienne
julienned
kept whole
leaves picked = leaves only, picked leaves
leaves removed
leaves torn
left whole
levelled = leveled
marinated
mashed
melted
membrane removed = membranes removed
minced
notched
packed
pat dry
patted dry
peeled
picked
picked over
pickled
pierced
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
pulsed
puréed
quartered
reconstituted
rehydrated
reserved
ribboned
riced
rind cut off
rind removed
rinsed
roasted
salted
sautéed
scalded
scaled
scored
scraped
scrubbed
seared
seasoned
seeds removed
seeds scraped = seeds scraped out
segmented
separated
shaken dry = spun dry
shaved
shelled
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
slit
slivered
smashed
smoked
snipped
soaked
softened
spatchcocked
spiralised = spiralized
split
spooned and levelled = spooned and leveled
squeezed
squeezed dry
stalks removed = stalk removed, stems removed, stem removed
steamed
steeped
stemmed = de-stemmed, destemmed
straight from the fridge
strained
stuffed
supremed
tailed
tails left on = tails on
tails removed
tenderised = tenderized
thawed
tied
toasted
topped and tailed
tops removed
torn
tough outer leaves removed = outer leaves removed, outer layer removed
trimmed
trussed
unbeaten
uncooked
undrained
unpeeled
unsifted
warmed
washed
wedged
whipped
whisked
white and green parts separated
white and light green parts only
white part only = white parts only, whites only
wilted
with the bone in = bone in
with the skin on = skin on
with their juice = with juice, with juices, with their juices, in their juice, juice reserved
with their leaves = with leaves
zest only
zested

# How finely: before a PREPWORD
@ PREPADV
chunkily
coarsely
completely
crosswise = crossways
crudely
diagonally
evenly
ever so finely
fairly finely
fairly thinly
finely
firmly
freshly
fully
generously
gently
heavily
lengthwise = lengthways
lightly
loosely
neatly
nice and finely
nice and roughly
nice and thinly
paper-thin
partially = partly
quite finely
quite roughly
quite thinly
really finely
really thinly
roughly
rustically
shallowly
slightly
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
american : region=us
ample
australian : region=au
bare
beautiful
big
big old = big ol', great big
brimming
canadian : region=ca
cheeky
decent
double
enormous
entire
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
imperial = british : region=uk
just-under
large
level = levelled, leveled
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
measuring
medium
medium-sized
metric : region=metric
mini
modest
mounded
naughty
nice
nice big = lovely big, good big
normal
ordinary
overflowing
packed
piled
pretty generous
proper
really generous
regular
respectable
rough
rounded
scant
scanty
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
buckets : mass
bunches : mass
clod
clump
crack or two
dot
drop or two
fingerful
fleck
flick
glob
glug or two
gob
good bit
good few : mass
grating
grind or two
gulp
heaps : mass
lashings : mass
little bit
little something
loads : mass
lots : mass
lug
masses : mass
modicum
mountains : mass
nubbin
oceans : mass
oodles : mass
pawful
reams : mass
scatter
scoopful
scosh
scraping
shaking
skosh
slather
sliver
sloosh
slug
soupçon
speck
spot
suggestion
tangle
teeny bit = teeny tiny bit, tiny little bit, little tiny bit
thimbleful
tons = tonne : mass
trace
tuft
wallop
wee bit
whack
whiff
whole bunch
whole lot
wisp

# What the amount is for, or how free it is: printed after a comma or in brackets
@ PURPOSE
as needed = as required, as necessary, as much as you need
enough to cover = just enough to cover
for acidity
for basting
for binding
for brushing = for brushing the top, for glazing, for brushing over
for coating = for dredging, for breading, for dredging the meat
for colour = for color, for a bit of colour
for crunch = for extra crunch, for texture
for decoration = to decorate, for decorating, as decoration
for deep frying
for dipping = for dunking
for drizzling = for a drizzle, for drizzling over, to drizzle over, for drizzling on top
for dusting = for dusting the top, for dusting the surface, for dusting the work surface, for flouring the surface
for flavour = for flavor, for extra flavour, for extra flavor
for freshness
for frying = for shallow frying, for pan-frying, for sautéing, for frying in
for garnish = to garnish, for garnishing, as a garnish, as garnish
for good measure
for greasing = for oiling, for buttering
for heat = for extra heat, for a bit of heat, for a kick
for moisture
for richness = for extra richness
for rolling = for rolling out, for rolling the dough, for rolling in
for shine
for sprinkling = for sprinkling over, for sprinkling on top, to sprinkle over, for scattering, to scatter over
for squeezing = to squeeze over, for squeezing over
for sweetness = for a bit of sweetness
for the pan = for the skillet
for thickening
for topping = for the top, as a topping
if available = if you have it, if you've got it, if you have some, if you've got some, if you can get it, if you can find it, if you can get some, if you can find some, if you have any, if you've got any : OPTIONAL
if desired = as desired, if so desired : OPTIONAL
if needed = if necessary, if required, if you need it, only if needed
if using = if you're using it, if you're using them, if used : OPTIONAL
if you like = if you'd like, if you fancy, if you fancy it, if you want, if you wish, if you so wish, if you like that sort of thing, if you're into that, if you prefer, if you feel like it, if liked, if preferred : OPTIONAL
if you like heat = if you like it hot, if you like it spicy, if you like spice, if you like a kick, if you want heat : OPTIONAL
optional = which is optional, that's optional, totally optional, completely optional, this is optional, it's optional, but optional, entirely optional, but that's optional : OPTIONAL
plus more = plus extra, plus a little extra, plus a little more
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
to finish = for finishing, to finish it off, to finish off
to grease the dish = for greasing the dish, for the dish, for buttering the dish
to grease the pan = for greasing the pan, for buttering the pan, for coating the pan
to grease the tin = for greasing the tin, for the tin
to serve = for serving, to serve with, to serve alongside, for serving with, to go with it
to taste = according to taste, to your taste, to your own taste, to suit your taste, as per taste, as per your taste, for seasoning, for taste
to your liking = as you like, to your preference, as you prefer, however you like it
whatever you like = any you like, your choice, of your choice, of choice, whichever you like, whatever you have, whatever you've got, whatever you fancy, whatever you have on hand, any kind, of any kind, any type
