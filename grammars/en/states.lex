# How food looks, feels and sounds when a step is done, as it follows "until",
# and the words for how hot a flame is.
#
# meat     a sign that meat, poultry, fish or egg is cooked through
# colour size sound mixture   what it speaks of
# weak     says little about when to stop ("ready", "done", "nice")
# write=   what a written recipe prints in its place

# ---- colour --------------------------------------------------------------

@ STATE colour
golden
golden brown = brown and golden
golden all over
golden on top
golden on both sides
golden on the outside
golden and crisp = crisp and golden, golden and crispy, crispy and golden
golden and bubbling = bubbling and golden
golden brown and crisp = golden brown and crispy, crisp and golden brown
golden brown and bubbling
golden around the edges = golden at the edges, golden round the edges
brown around the edges = brown at the edges
lightly golden = light golden
light golden brown = lightly golden brown
pale golden = pale gold
deep golden = deep gold
deep golden brown = deeply golden, dark golden brown, dark golden
evenly golden
nice and golden : write=golden
nicely golden : write=golden
lovely and golden : write=golden
gorgeous and golden : write=golden
beautifully golden : write=golden
gold
browned
brown : ambiguous
brown all over = browned all over
brown on all sides = browned on all sides
brown on both sides = browned on both sides
well browned = nicely browned
nice and brown : write=browned
lightly browned = light brown
deeply browned = deep brown, dark brown
just browned
evenly browned
just turning brown = turning brown
just turning golden = turning golden
just colouring = just coloring
coloured = colored
lightly coloured = lightly colored
well coloured = well colored
charred
lightly charred
charred all over
charred in places = charred in spots
blackened
blackened all over
blistered
blistered and charred
scorched
toasted
lightly toasted
well toasted
caramelised = caramelized
deeply caramelised = deeply caramelized
lightly caramelised = lightly caramelized
sticky and caramelised = sticky and caramelized
amber
deep amber
light amber
amber coloured = amber colored
the colour of caramel = the color of caramel
the colour of honey = the color of honey
the colour of straw = the color of straw
straw coloured = straw colored
copper coloured = copper colored
mahogany
nut brown
rosy
blushing
bronzed
burnished
lacquered
pale
pale in colour = pale in color
bright green
vivid green
bright red
deep red
brick red
dark red
ruby red
bright orange
bright yellow
pale yellow
pink : ambiguous
still pink
pink in the middle = pink in the centre, pink in the center
just pink
pink all over : meat
pink and opaque : meat
pink and curled : meat
white : ambiguous
white all over
ashed over
translucent
transparent
clear : ambiguous
see-through
glassy
glossy
shiny
glossy and thick = thick and glossy
smooth and glossy = glossy and smooth
smooth and shiny
opaque : meat
opaque all the way through = opaque throughout, opaque right through : meat
just opaque : meat
white and opaque : meat
no longer pink : meat
no longer pink inside = no longer pink in the middle, no longer pink in the centre, no longer pink in the center : meat
no longer raw : meat
no longer translucent : meat
not pink anymore = not pink any more : meat write=no-longer-pink
not pink in the middle : meat write=no-longer-pink-in-the-middle

# ---- texture -------------------------------------------------------------

@ STATE
soft
soft and golden = golden and soft
soft and sticky
soft and translucent = translucent and soft
soft and jammy = jammy and soft
soft and pulpy
soft and mushy
soft but not brown = soft but not browned, soft but not coloured, soft but not colored
soft but still holding their shape = soft but holding their shape
soft to the touch
soft all the way through = soft right through
nice and soft : write=soft
really soft : write=very-soft
very soft
just soft
meltingly soft
softened
slightly softened = just softened
completely softened
tender
tender but firm
tender but still crisp
tender when pierced = tender when poked, tender when pierced with a knife
tender to the bite
tender to the point of a knife = tender to a knife point
nice and tender : write=tender
just tender
very tender
meltingly tender : meat
fall-apart tender : meat
fork tender : meat
knife tender
crisp-tender = tender-crisp
pull-apart tender : meat
spoonable
shreddable : meat
falling apart : meat
falling off the bone : meat
cooked
fully cooked : meat
completely cooked : meat
cooked through = cooked all the way through, cooked right through : meat
just cooked through : meat
just cooked : meat
nearly cooked = almost cooked
half cooked
part cooked = partly cooked
piping hot = piping hot all the way through, piping hot throughout : meat
steaming hot = steaming hot all the way through, steaming hot throughout : meat
medium : meat ambiguous
medium rare : meat
rare : meat
medium well : meat
well done : meat
blue : meat ambiguous
al dente
just shy of al dente
crisp
crispy
crisp and brown = crispy and brown
crisp all over = crispy all over
crisp around the edges = crispy around the edges, crispy round the edges, crisp at the edges, crispy at the edges
crisp on the outside = crispy on the outside
crisp on the bottom = crispy on the bottom
crisp on top = crispy on top
crisp and light
nice and crisp : write=crisp
nice and crispy : write=crisp
really crispy : write=crisp
super crispy : write=crisp
lovely and crisp : write=crisp
crunchy
crusty
crumbly
dry
dry to the touch
touch dry
bone dry
mostly dry
tacky
sticky
sticky and glossy
sticky and reduced
syrupy
thick and syrupy
jammy
thick and jammy
pulpy
mushy
squishy
squidgy
gooey
fudgy
chewy
springy
springy to the touch = springy when pressed, springy to touch
firm
firm to the touch : meat
just firm : meat
firm but springy
firm enough to slice = firm enough to cut
firm enough to handle
firm enough to roll
hard
hard to the touch
solid
frozen solid
frozen
semi-frozen = half frozen
set
just set : meat
just about set
completely set = fully set, totally set
set at the edges = set around the edges, set round the edges
set on top
set but wobbly = set but still wobbly
set with a slight wobble = set with a wobble, just set with a slight wobble
softly set
barely set
wobbly
jiggly
thick
thick and creamy
thick and glossy and smooth
thick and smooth
thick and pale = pale and thick
thick enough to coat a spoon
thick and bubbling = thick and bubbly
nice and thick : write=thick
really thick : write=very-thick
very thick
thickened
slightly thickened = thickened slightly
just thickened
well thickened
thinned
runny
smooth
smooth and elastic : mixture
smooth and creamy
smooth and silky = silky smooth, silky
smooth and pliable
smooth and thick
smooth and lump free
completely smooth = totally smooth, perfectly smooth
nice and smooth : write=smooth
really smooth : write=smooth
super smooth : write=smooth
velvety
satiny
creamy
creamy and smooth
creamy and thick
elastic
stretchy
pliable
supple
bouncy
plump
puffed
puffed up = puffy
puffed and golden = puffed up and golden
well risen
well risen and golden
risen
flat
flaky : meat
flaking : meat
fluffy
light and fluffy : mixture
pale and fluffy = light and pale, pale and creamy, light in colour and fluffy : mixture
pale and thick and fluffy : mixture
light and airy : mixture
light and creamy : mixture
thick and fluffy : mixture
fluffy and pale : mixture write=pale-and-fluffy
nice and fluffy : write=fluffy mixture
frothy : mixture
foamy : mixture
bubbly
wilted
just wilted
completely wilted
collapsed
slumped
burst
bursting
popped
split
melted
melted and smooth = smooth and melted
melted and bubbling = melted and bubbly
just melted
completely melted = fully melted
dissolved
completely dissolved = fully dissolved
absorbed
fully absorbed = completely absorbed
evaporated
drained
coarse
fine
stiff : mixture
stiff and glossy : mixture
soft peaks : mixture
softly whipped : mixture
stiffly whipped : mixture
lightly whipped : mixture
stiff but not dry : mixture
medium peaks : mixture
firm peaks : mixture
stiff peaks : mixture
ribbon stage : mixture
the ribbon stage : mixture
soft ball stage = the soft ball stage
hard ball stage = the hard ball stage
firm ball stage = the firm ball stage
soft crack stage = the soft crack stage
hard crack stage = the hard crack stage
thread stage = the thread stage
hard boiled
soft boiled
jammy in the middle
bendy
limp
rendered
fully rendered
crisped up
done : weak
done to your liking : weak write=done-to-your-liking
cooked to your liking : weak
to your liking : weak
ready : weak
good : weak ambiguous
nice : weak ambiguous
perfect : weak ambiguous
happy : weak ambiguous
lovely : weak ambiguous
right : weak ambiguous

# ---- mixture -------------------------------------------------------------

@ STATE mixture
combined
just combined = only just combined
well combined
fully combined = completely combined, thoroughly combined
evenly combined
mixed
well mixed = thoroughly mixed
just mixed
blended
well blended
incorporated
fully incorporated = completely incorporated, well incorporated
just incorporated
emulsified
homogeneous
uniform
evenly coated
coated
well coated = fully coated, completely coated
coated all over
covered
completely covered
lump free = free of lumps
creamed
curdled
like breadcrumbs
like fine breadcrumbs
like coarse breadcrumbs
like wet sand = like damp sand
like coarse sand
the texture of breadcrumbs = the consistency of breadcrumbs
the texture of wet sand
the consistency of double cream = the consistency of heavy cream
the consistency of single cream
the consistency of honey
the consistency of custard
the consistency of yogurt = the consistency of yoghurt
the consistency of paint
the consistency of peanut butter
the consistency of toothpaste
the thickness of cream
shaggy
crumb-like = crumby

# ---- size, smell, sound, heat --------------------------------------------

@ STATE size
doubled
doubled in size = doubled in volume, double in size, double the size, double in volume, doubled in bulk
nearly doubled = almost doubled, nearly doubled in size, almost doubled in size
tripled
tripled in size = tripled in volume, triple in size
half again as big
reduced
reduced by half = halved, reduced to half
reduced by a third
reduced by two thirds
reduced by three quarters
reduced by a quarter
well reduced
slightly reduced
reduced and sticky
reduced and thickened = thickened and reduced
reduced to a glaze
reduced to a syrup
almost dry = nearly dry
shrunk
shrunken

@ STATE sound
hollow
hollow when tapped = hollow when you tap it, hollow when tapped underneath
hollow sounding
sizzling hot

@ STATE
fragrant
aromatic
nutty
nutty smelling
really fragrant : write=fragrant
nice and fragrant : write=fragrant
toasty
smelling nutty
smelling toasty

@ STATE
hot
very hot
really hot : write=very-hot
nice and hot : write=hot
smoking
smoking hot
just smoking = just starting to smoke
shimmering = shimmery
hot enough
hot all the way through = heated through, hot throughout, hot right through : meat
warm
warm through = warmed through
just warm
lukewarm
tepid
hand hot
blood warm
warm to the touch
cool
completely cool = fully cool, completely cooled, totally cool
cooled
slightly cooled = cooled slightly
cool enough to handle = cool enough to touch
cold
completely cold = totally cold, stone cold
ice cold
well chilled
chilled
thoroughly chilled
room temperature
at a boil = boiling
at a rolling boil
at a simmer = simmering
just simmering
just boiling
up to temperature = up to temp
preheated
steaming
bubbling
bubbling all over
bubbling and thick
bubbling around the edges = bubbling at the edges, bubbling round the edges
gently bubbling
foaming
sizzling
thawed
defrosted
thoroughly defrosted = completely defrosted, fully thawed

# ---- clauses -------------------------------------------------------------
# An article before the first noun is no part of the entry.

@ STATE meat
juices run clear = juice runs clear, juices are running clear, juices are clear, juices come out clear, juices ran clear
juices run clear when pierced
flesh is opaque = flesh turns opaque, fish is opaque, fish turns opaque
flesh flakes = flesh flakes easily, fish flakes, fish flakes easily
shells open = shells have opened, shells pop open, mussels open, clams open, mussels have opened, clams have opened
meat falls off the bone = meat is falling off the bone
meat falls apart = meat is falling apart
meat shreds easily
meat pulls away from the bone
no pink remains = no pink is left, there's no pink left, there is no pink left, there's no pink, there's no pink meat, no pink left
no blood remains = there's no blood
white is set = whites are set, egg white is set, egg whites are set, white sets, whites set
whites are set and yolks are runny = white is set and yolk is runny, whites are set but yolks are still runny
yolk is firm = yolks are firm, yolk is set, yolks are set, yolk sets, yolks set
yolk is just set
egg is set = eggs are set, egg sets, eggs set
egg is cooked = eggs are cooked
whites are opaque = white is opaque
centre is opaque = center is opaque
legs wiggle freely = leg wiggles freely, leg moves freely, leg pulls away easily

@ STATE
toothpick comes out clean = toothpick inserted comes out clean
skewer comes out clean = skewer inserted comes out clean, skewer poked in comes out clean
cocktail stick comes out clean
knife comes out clean = knife inserted comes out clean
cake tester comes out clean = tester comes out clean
skewer comes out with moist crumbs = skewer comes out with a few crumbs, toothpick comes out with moist crumbs, toothpick comes out with a few crumbs
knife goes in easily = knife slides in easily, knife slips in easily, knife goes through easily, knife slides through easily, knife slides straight in
fork goes in easily = fork slides in easily, fork goes through easily
skewer goes in easily = skewer slides in easily
spoon leaves a trail = wooden spoon leaves a trail
sounds hollow when tapped = sound hollow when tapped, sounds hollow when you tap it, sound hollow when you tap them : sound
flesh comes away from the bone : meat
sugar melts = sugar has melted, sugar is melted
raw smell goes = raw smell disappears, raw smell is gone, raw smell has gone
raw flour taste goes = raw flour taste is gone, flour is cooked out, flour cooks out
cabbage is soft = cabbage softens, cabbage is tender, cabbage wilts
carrots are tender = carrots are soft, carrot is tender, carrots soften
peppers are soft = peppers soften, peppers have softened
mushrooms are golden = mushrooms are brown, mushrooms brown, mushrooms have browned
mushrooms give up their water = mushrooms release their water, mushrooms release their liquid, mushrooms have released their liquid
meat is browned = meat is brown, mince is brown, mince is browned, beef is browned, beef is brown, meat has browned
meat is tender = meat is soft, beef is tender, lamb is tender, pork is tender
chicken is cooked through = chicken is cooked, meat is cooked through, pork is cooked through, turkey is cooked through, beef is cooked through, mince is cooked through : meat
fish is cooked through = fish is cooked, salmon is cooked through, salmon flakes, cod flakes, fish is just cooked : meat
prawns are pink = prawns turn pink, shrimp is pink, shrimp are pink, shrimp turn pink, prawns are pink all over, shrimp turns pink : meat
prawns are cooked through = shrimp is cooked through, shrimp are cooked through : meat
bacon is crisp = bacon is crispy, bacon crisps up, bacon is golden
yolk is runny = yolks are runny, yolk is still runny, yolks are still runny
no streaks remain = no streaks of flour remain, no white streaks remain, there are no streaks, there's no flour left, no dry flour remains, no dry bits remain, no flour remains, there are no dry bits, no dry flour is left : mixture
no lumps remain = there are no lumps, no lumps are left, there are no lumps left, there's no lumps, no more lumps : mixture
no liquid remains = there's no liquid left, no liquid is left
soft peaks form = peaks form : mixture
stiff peaks form : mixture
medium peaks form : mixture
a ribbon forms : mixture
sugar dissolves = sugar has dissolved, sugar is dissolved, sugar's dissolved, sugar has all dissolved
salt dissolves = salt has dissolved, salt is dissolved
gelatine dissolves = gelatin dissolves, gelatine has dissolved, gelatin has dissolved
butter melts = butter has melted, butter is melted, butter's melted
butter foams = butter is foaming, butter starts to foam, butter begins to foam
foam subsides = foaming subsides, foaming stops
butter browns = butter is brown, butter smells nutty, butter turns brown
chocolate melts = chocolate has melted, chocolate is melted, chocolate's melted
cheese melts = cheese has melted, cheese is melted, cheese's melted
cheese is melted and bubbling = cheese is bubbling, cheese bubbles
cheese is golden
oil shimmers = oil is shimmering, oil starts to shimmer
oil smokes = oil just smokes, oil is just smoking, oil begins to smoke
oil separates = oil starts to separate, oil floats on top, oil rises to the top, fat separates
fat renders = fat has rendered, fat is rendered, fat runs
skin is crisp = skin is crispy, skin crisps, skin crisps up, skin goes crispy
skins blister = skin blisters, skins blacken, skin is charred, skin is black
skins split = skin splits, skins burst
skins slip off = skins come off easily, skin peels off easily
edges are golden = edges turn golden, edges are brown, edges brown, edges are golden brown, edges start to brown
edges are crisp = edges are crispy, edges crisp up
edges curl
edges are set = edges set, edges look dry
edges pull away = edges come away, edges pull away from the sides
centre is set = center is set, middle is set
centre wobbles = centre still wobbles, center still jiggles, center jiggles, middle still wobbles, there's a slight wobble, there's still a slight wobble
top is golden = top is golden brown, tops are golden, tops are golden brown, top is brown, top browns
top is crisp = top is crispy
top is set
top cracks = tops crack
bottom is golden = bottom is brown, bottoms are golden, underside is golden, base is golden
base is crisp
bubbles form = bubbles appear, bubbles form on top, bubbles form on the surface, bubbles appear on top, bubbles pop, bubbles start to appear, bubbles burst on the surface
water boils = water comes to the boil, water is boiling, water comes to a boil
liquid is absorbed = liquid has been absorbed, liquid is all absorbed, water is absorbed, stock is absorbed, water has been absorbed, milk is absorbed
liquid has evaporated = liquid evaporates, water has evaporated, water evaporates, moisture has evaporated, liquid has gone, water has gone
liquid has reduced = liquid reduces, sauce reduces, sauce has reduced
liquid has reduced by half = liquid is reduced by half, sauce has reduced by half, liquid reduces by half
alcohol has cooked off = alcohol cooks off, alcohol burns off
sauce thickens = sauce has thickened, sauce is thick, sauce is thickened, sauce starts to thicken
mixture thickens = mixture has thickened
custard thickens = custard has thickened, custard is thick
water runs clear = water is clear, water comes out clear
seeds pop = seeds start to pop, mustard seeds pop, seeds crackle
popping stops = popping slows, popping slows down
garlic is fragrant = garlic smells fragrant
spices are fragrant = spices smell fragrant
onions soften = onion softens, onions are soft, onion is soft, onions have softened
onions are translucent = onion is translucent, onions turn translucent, onions go translucent
onions are golden = onion is golden
vegetables are tender = vegetables soften, vegetables are soft, veg is soft, veg is tender
potatoes are tender = potatoes are soft, potatoes are cooked
pasta is al dente
pasta is cooked
rice is tender = rice is cooked
rice is fluffy
noodles are tender = noodles are soft
beans are tender = beans are soft
lentils are tender = lentils are soft
tomatoes break down = tomatoes collapse, tomatoes have broken down
tomatoes burst
berries burst = fruit breaks down
leaves wilt = spinach wilts, greens wilt, spinach has wilted
dough rises = dough has risen
dough is smooth
dough is smooth and elastic
dough doubles = dough has doubled
dough doubles in size = dough has doubled in size
jam sets
everything's combined = everything is combined : mixture
timer goes off = timer beeps : weak

# What a food does when a step is done, with the subject left to the rules:
# "until it thickens", "until they float".

@ STATEVERB verb
thicken
thicken slightly
thicken up
reduce
reduce by half
reduce down
boil
simmer
bubble
bubble up
bubble away
foam
froth
foam up
float
float to the top
float to the surface
rise to the top : past=rose part=risen
rise to the surface : past=rose part=risen
bob to the top
sink : past=sank part=sunk
set : past=set part=set ing=setting
set up : past=set part=set ing=setting
firm up
stiffen
harden
solidify
freeze : past=froze part=frozen
thaw
cool
cool down
cool completely
warm up
heat through
soften
soften up
break down : past=broke part=broken
collapse
burst : past=burst part=burst
split : past=split part=split ing=splitting
wilt
wilt down
rise : past=rose part=risen
prove
double
double in size
double in volume
triple
triple in size
puff
puff up
swell : past=swelled part=swollen
plump up
melt
melt down
dissolve
evaporate
absorb
disappear
subside
smoke
shimmer
separate
curdle
render
crisp
crisp up
blister
blacken
char : past=charred part=charred ing=charring
curl
crack
wobble
jiggle
sizzle
splutter
crackle
pop
brown
brown all over
brown slightly
colour : same=colour
color : same=colour
caramelise : same=caramelise
caramelize : same=caramelise
darken
change colour : same=change-colour
change color : same=change-colour
turn golden
turn golden brown
turn brown
turn pink : meat
turn pink and opaque : meat
turn white
turn opaque : meat
turn translucent
turn glossy
turn dark
turn amber
turn soft
turn crisp
turn crispy
go golden : past=went part=gone
go golden brown : past=went part=gone
go brown : past=went part=gone
go pink : past=went part=gone meat
go opaque : past=went part=gone meat
go translucent : past=went part=gone
go white : past=went part=gone
go soft : past=went part=gone
go crispy : past=went part=gone
go crisp : past=went part=gone
go glossy : past=went part=gone
go thick : past=went part=gone
go cold : past=went part=gone
become soft : past=became part=become
become tender : past=became part=become
become translucent : past=became part=become
become thick : past=became part=become
become smooth : past=became part=become
get golden : past=got part=got ing=getting
get crispy : past=got part=got ing=getting
get thick : past=got part=got ing=getting
get hot : past=got part=got ing=getting
get soft : past=got part=got ing=getting
take on some colour : past=took part=taken same=take-on-some-colour
take on some color : past=took part=taken same=take-on-some-colour
take on a bit of colour : past=took part=taken write=take-on-some-colour same=take-on-some-colour
pick up some colour : write=take-on-some-colour same=take-on-some-colour
smell nutty : past=smelled part=smelt
smell fragrant : past=smelled part=smelt
smell toasty : past=smelled part=smelt
smell amazing : past=smelled part=smelt weak
flake : meat
flake easily : meat
flake apart : meat
open up : meat
pop open : meat
fall apart : past=fell part=fallen meat
fall off the bone : past=fell part=fallen meat
shred easily : meat
pull apart easily : meat
cook through : meat
come out clean : past=came part=come
come out with moist crumbs : past=came part=come
come out with a few crumbs : past=came part=come
come away from the sides : past=came part=come
come away from the edges : past=came part=come
come off easily : past=came part=come
come together : past=came part=come
come together in a ball : past=came part=come
come together into a dough : past=came part=come
come to the boil : past=came part=come
come to a boil : past=came part=come
come up to the boil : past=came part=come
come to a simmer : past=came part=come
come up to a simmer : past=came part=come
come to temperature : past=came part=come
come to room temperature : past=came part=come
start to boil
start to bubble
start to simmer
start to thicken
start to brown
start to colour = start to color
start to caramelise = start to caramelize
start to soften
start to wilt
start to smoke
start to set
start to pop
start to foam
start to come away
start to turn golden
begin to boil : past=began part=begun ing=beginning
begin to brown : past=began part=begun ing=beginning
begin to soften : past=began part=begun ing=beginning
begin to thicken : past=began part=begun ing=beginning
begin to colour = begin to color : past=began part=begun ing=beginning
reach a boil
reach the boil
reach a simmer
reach setting point
reach temperature
reach room temperature
pull away from the sides
pull away from the edges
pull away from the bowl
leave the sides : past=left part=left
leave the sides of the pan : past=left part=left
leave the sides of the bowl : past=left part=left
leave a trail : past=left part=left
leave a ribbon : past=left part=left
release easily
slide off
slip off
slide in easily : past=slid part=slid
slide through easily : past=slid part=slid
go in easily : past=went part=gone
go through easily : past=went part=gone
slip in easily
spring back : past=sprang part=sprung
bounce back
sound hollow
feel firm : past=felt part=felt
feel dry : past=felt part=felt
feel set : past=felt part=felt
feel tacky : past=felt part=felt
look dry
look set
look glossy
look done : weak
look like breadcrumbs
look like fine breadcrumbs
look like wet sand
look like damp sand
look like coarse crumbs
resemble breadcrumbs
resemble fine breadcrumbs
resemble coarse breadcrumbs
resemble wet sand
resemble coarse crumbs
coat a spoon
coat the spoon
coat the back of a spoon
coat the back of the spoon
cling to the spoon : past=clung part=clung
hold its shape : past=held part=held
hold their shape : past=held part=held
hold soft peaks : past=held part=held
hold stiff peaks : past=held part=held
hold medium peaks : past=held part=held
hold firm peaks : past=held part=held
hold a trail : past=held part=held
hold together : past=held part=held
form soft peaks
form stiff peaks
form a ball
form a dough
form a soft dough
form a paste
form a crust
form a skin
form a ribbon
dry out
relax
clear

# What a cue may speak of besides a food.

@ STATENOUN noun
juice : ambiguous
skewer
toothpick
cocktail stick
cake tester
tester
knife : plural=knives
fork
edge
side
centre = center
middle
top
bottom
base
underside
surface
outside
inside
skin
flesh
shell
white : ambiguous
yolk
crust
crumb
crumble : ambiguous
liquid
moisture : mass
water : mass
sauce
syrup
mixture
dough
batter
filling
topping
custard
bubble
peak
lump
streak
grain : ambiguous
foam : mass
froth : mass
steam : mass
fat
oil
colour : same=colour
color : same=colour
smell
aroma
leg : ambiguous
tail : ambiguous
meat
fish : plural=fish
bone : ambiguous
seed
leaf : plural=leaves
rind
fibre = fiber
exterior
interior
wobble
resistance : mass
everything : mass
thermometer
temperature
internal temperature
internal temp
core temperature

# What may follow a cue.

@ LISTED
when tapped
when you tap it
when you tap them
when tapped on the bottom
when tapped on the base
when tapped underneath
when pressed
when you press it
when gently pressed
when lightly pressed
when touched
when you touch it
when pierced
when you pierce it
when poked
when you poke it
when pierced with a knife
when pierced with a fork
when pierced with a skewer
when squeezed
when pushed
when lifted
when you lift the whisk
when the whisk is lifted
when the whisk is lifted out
when shaken
when you shake it
when you shake the tin
when you shake the pan
when cut
when you cut into it
when you cut it open
with a fork
with no resistance
without resistance
inserted
inserted in the centre = inserted in the center
inserted into the centre = inserted into the center
inserted in the middle
inserted into the middle
pushed into the centre = pushed into the center
pushed into the middle
poked into the middle
poked into the centre = poked into the center
stuck in the middle
stuck into the middle
at the thickest part
at its thickest part
in the thickest part
in the thickest part of the thigh
in the thickest part of the breast

# ---- heat levels ---------------------------------------------------------

@ HEATLEVEL
low
very low
lowest : write=very-low
really low : write=very-low
super low : write=very-low
low-ish = lowish : write=low
fairly low : write=low
quite low : write=low
nice and low : write=low
low flame : write=low
medium-low = low-medium, low to medium, medium to low
medium-lowish : write=medium-low
medium
mid : write=medium
middling : write=medium
moderate
medium-ish = mediumish : write=medium
moderately high : write=medium-high
moderately low : write=medium-low
moderately hot : write=medium-high
medium-high = high-medium, medium to high, high to medium
medium-highish : write=medium-high
fairly high : write=high
quite high : write=high
high-ish = highish : write=high
high
very high
really high : write=very-high
super high : write=very-high
nice and high : write=high
highest : write=very-high
max : write=very-high ambiguous
maximum : write=very-high ambiguous
full : write=high ambiguous
full blast : write=very-high
full whack : write=very-high
full pelt : write=very-high
full tilt : write=very-high
full power : write=high
half power : write=medium
full heat : write=high
flat out : write=very-high
as high as it will go = as high as it goes, as hot as it will go, as hot as it goes, as hot as you can get it : write=very-high
as low as it will go = as low as it goes : write=very-low
screaming hot : write=very-high
ripping hot : write=very-high
blazing hot : write=very-high
blazing : write=very-high
roaring : write=very-high
raging : write=very-high
fierce : write=high
brisk : write=medium-high
lively : write=medium-high
strong : write=high ambiguous
gentle
very gentle : write=very-low
nice and gentle : write=gentle
slow : write=low ambiguous
low and slow : write=low
slow and low : write=low
soft : write=low ambiguous
barest : write=very-low
bare : write=very-low ambiguous
warm : write=low ambiguous
keep-warm : write=low
hot : write=high ambiguous
very hot : write=very-high
really hot : write=very-high
cool : write=low ambiguous
