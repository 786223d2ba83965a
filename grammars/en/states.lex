# How food looks, feels and sounds when a step is done, as it follows "until",
# and the words for how hot a flame is.
#
# adj      follows "it is": "until golden"
# clause   has its own subject: "until the juices run clear"
# meat     a sign that meat, poultry, fish or egg is cooked through
# colour texture size smell sound temp mixture   what it speaks of
# weak     says little about when to stop ("ready", "done", "nice")
# write=   what a written recipe prints in its place

# ---- colour --------------------------------------------------------------

@ STATE adj colour
golden
golden brown = golden-brown, brown and golden
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
well browned = well-browned, nicely browned
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
nut brown = nut-brown
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

@ STATE adj texture
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
fall-apart tender = fall apart tender : meat
fork tender = fork-tender : meat
knife tender = knife-tender
crisp-tender = crisp tender, tender-crisp
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
piping hot = piping hot all the way through, piping hot throughout : meat temp
steaming hot = steaming hot all the way through, steaming hot throughout : meat temp
medium : meat ambiguous
medium rare = medium-rare : meat
rare : meat
medium well = medium-well : meat
well done = well-done : meat
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
touch dry = touch-dry
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
thick enough to coat a spoon = thick enough to coat the back of a spoon
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
smooth and lump free = smooth and lump-free
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
puffed up = puffed-up, puffy
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
finely ground
finely chopped
coarsely ground
roughly chopped
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
hard boiled = hard-boiled
soft boiled = soft-boiled
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
looking good : weak
right : weak ambiguous

# ---- mixture -------------------------------------------------------------

@ STATE adj mixture
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
lump free = lump-free, free of lumps
creamed
curdled
like breadcrumbs
like fine breadcrumbs = fine breadcrumbs
like coarse breadcrumbs = coarse breadcrumbs
like wet sand = like damp sand, wet sand
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

@ STATE adj size
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
spread out

@ STATE adj smell
fragrant
aromatic
nutty
nutty smelling = nutty-smelling
really fragrant : write=fragrant
nice and fragrant : write=fragrant
toasty
smelling nutty
smelling toasty

@ STATE adj temp
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
hand hot = hand-hot
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
room temperature = at room temperature
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
# An article before the first noun is optional: "the juices run clear".

@ STATE clause meat
juices run clear = juice runs clear, juices are running clear, juices are clear, juices come out clear
juices run clear when pierced = juices run clear when you pierce it
flakes easily = flakes easily with a fork, it flakes, it flakes easily, they flake easily, flesh flakes, flesh flakes easily, fish flakes, fish flakes easily, flakes apart, flakes with a fork
flesh is opaque = fish is opaque, flesh turns opaque
turns opaque = turn opaque, goes opaque, go opaque
turns pink = turn pink, go pink, goes pink
turn pink and opaque
shells open = shells have opened, shells pop open, they open, they've opened, they have opened, mussels open, clams open, all open
meat falls off the bone = it falls off the bone, falls off the bone
meat falls apart = it falls apart, they fall apart, falls apart
meat shreds easily = it shreds easily, shreds easily, it pulls apart easily, pulls apart easily
meat pulls away from the bone
no pink remains = no pink is left, there's no pink left, there is no pink left, there's no pink, there's no pink meat
no blood remains
white is set = whites are set, egg white is set, egg whites are set
whites are set and yolks are runny = white is set and yolk is runny, whites are set but yolks are still runny
yolk is firm = yolks are firm, yolk is set, yolks are set
yolk is just set
yolk is runny : ambiguous
egg is set = eggs are set
eggs are scrambled
whites are opaque = white is opaque
centre is opaque = center is opaque
thermometer reads
internal temperature reaches = internal temp reaches
legs wiggle freely = leg wiggles freely, leg moves freely, leg pulls away easily
tail curls
it springs back when pressed : texture

@ STATE clause
a skewer comes out clean = skewer comes out clean, a skewer inserted comes out clean, skewer inserted in the middle comes out clean, a skewer inserted into the middle comes out clean, a skewer inserted in the centre comes out clean, a skewer inserted into the centre comes out clean, a skewer poked in comes out clean
a toothpick comes out clean = toothpick comes out clean, a toothpick inserted comes out clean, a toothpick inserted in the center comes out clean, a toothpick inserted into the center comes out clean, a toothpick inserted in the middle comes out clean
a cocktail stick comes out clean = cocktail stick comes out clean
a knife comes out clean = knife comes out clean, a knife inserted in the center comes out clean, a knife inserted in the centre comes out clean
a cake tester comes out clean = cake tester comes out clean, tester comes out clean
a skewer comes out with moist crumbs = skewer comes out with a few crumbs, a toothpick comes out with moist crumbs, toothpick comes out with a few crumbs
it comes out clean = comes out clean
a knife goes in easily = knife goes in easily, a knife slides in easily, knife slides in easily, a knife slips in easily, knife slips in easily, a knife slides in with no resistance, a knife goes through easily, knife slides through easily, knife goes in without resistance, a knife slides straight in
a fork goes in easily = fork goes in easily, a fork slides in easily
a skewer goes in easily = skewer slides in easily, a skewer slides in easily
sounds hollow when tapped = hollow when tapped, it sounds hollow, sounds hollow, hollow when you tap it, it sounds hollow when tapped, it sounds hollow when you tap it, sounds hollow when tapped on the bottom, sounds hollow when tapped underneath : sound
springs back = it springs back, springs back when pressed, springs back when touched, springs back to the touch, it springs back when touched, top springs back
coats the back of a spoon = it coats the back of a spoon, coats the back of the spoon, it coats the back of the spoon, will coat the back of a spoon, coat the back of a spoon : texture
coats the spoon = coats a spoon
holds its shape = it holds its shape, hold their shape, they hold their shape, will hold its shape
holds soft peaks = hold soft peaks, it holds soft peaks, soft peaks form, it forms soft peaks, forms soft peaks, you have soft peaks, you get soft peaks, you've got soft peaks : mixture
holds stiff peaks = hold stiff peaks, it holds stiff peaks, stiff peaks form, it forms stiff peaks, forms stiff peaks, you have stiff peaks, you get stiff peaks, you've got stiff peaks : mixture
holds medium peaks = medium peaks form
holds a trail = leaves a trail, it leaves a trail, leaves a ribbon, a ribbon forms, it leaves a ribbon : mixture
wooden spoon leaves a trail = spoon leaves a trail, you can draw a line, a line holds
resembles breadcrumbs = it resembles breadcrumbs, it looks like breadcrumbs, looks like breadcrumbs, resembles fine breadcrumbs, it resembles fine breadcrumbs, looks like fine breadcrumbs : mixture
resembles wet sand = it looks like wet sand, looks like wet sand, looks like damp sand : mixture
resembles coarse crumbs = looks like coarse crumbs, it resembles coarse crumbs : mixture
forms a dough = it forms a dough, dough forms, a dough forms, it comes together, comes together, it comes together as a dough, comes together into a dough, it comes together into a dough, dough comes together, it comes together in a ball, it forms a ball, forms a ball : mixture
forms a paste = it forms a paste, you have a paste, a paste forms : mixture
pulls away from the sides = it pulls away from the sides, pulls away from the sides of the bowl, comes away from the sides, it comes away from the sides, comes away from the sides of the pan, leaves the sides of the pan, pulls away from the edges of the tin : mixture
no streaks remain = no streaks of flour remain, no white streaks remain, there are no streaks, there's no flour left, no dry flour remains, no dry bits remain, no flour remains, you can't see any flour, there are no dry bits : mixture
no lumps remain = there are no lumps, no lumps are left, there are no lumps left, no more lumps : mixture
sugar dissolves = sugar has dissolved, sugar is dissolved, all the sugar has dissolved, sugar's dissolved, sugar melts, sugar has melted
salt dissolves = salt has dissolved, salt is dissolved
gelatine dissolves = gelatin dissolves, gelatine has dissolved, gelatin has dissolved
butter melts = butter has melted, butter is melted, butter's melted, all the butter has melted
butter foams = butter is foaming, butter starts to foam, foam subsides, foaming subsides
butter browns = butter is brown, butter smells nutty, butter turns brown
chocolate melts = chocolate has melted, chocolate is melted, chocolate's melted
cheese melts = cheese has melted, cheese is melted, cheese's melted, cheese is melted and bubbling, cheese bubbles, cheese is bubbling, cheese is golden
oil shimmers = oil is shimmering, oil starts to shimmer, it shimmers
oil smokes = oil just smokes, oil is just smoking, oil begins to smoke
oil separates = oil starts to separate, oil floats on top, oil rises to the top, fat separates, oil comes out
fat renders = fat has rendered, fat is rendered, fat runs
skin is crisp = skin is crispy, skin crisps, skin crisps up, skin goes crispy
skin blisters = skins blister, skins blacken, skin is charred, skin is black
skins split = skin splits, skins burst
skins slip off = skins come off easily, skin peels off easily
edges are golden = edges turn golden, edges are brown, edges brown, edges are golden brown, edges start to brown, edges are crisp, edges curl, edges lift
edges are set = edges set, edges look dry
edges pull away = edges come away, edges pull away from the sides, edges come away from the tin
centre is set = center is set, middle is set
centre wobbles = centre still wobbles, center still jiggles, center jiggles, it has a slight wobble in the middle, middle still wobbles, there's a slight wobble, it has a slight wobble, centre is just wobbly
top is golden = top is golden brown, tops are golden, tops are golden brown, top is brown, top browns
top is crisp = top is crispy
top is set
top cracks = tops crack
bottom is golden = bottom is brown, bottoms are golden, underside is golden, base is golden, base is crisp
bubbles form = bubbles appear, bubbles form on top, bubbles form on the surface, bubbles appear on top, bubbles pop, bubbles start to appear, you see bubbles, small bubbles form, bubbles burst on the surface
water boils = water comes to the boil, water is boiling, it boils, it comes to the boil, it comes to a boil, it reaches a boil, it starts to boil, it's boiling, comes to a boil, comes to the boil
it simmers = it comes to a simmer, it's simmering, it reaches a simmer, it starts to simmer, comes to a simmer
it bubbles = it's bubbling, it starts to bubble, it bubbles up, bubbles up, starts to bubble
liquid is absorbed = liquid has been absorbed, all the liquid is absorbed, water is absorbed, stock is absorbed, water has been absorbed, all the water is absorbed, it absorbs the liquid, it's absorbed
liquid has evaporated = liquid evaporates, water has evaporated, water evaporates, all the liquid has evaporated, moisture has evaporated, it's evaporated
liquid has reduced = liquid reduces, it reduces, liquid is reduced by half, it has reduced by half, it reduces by half, sauce reduces
alcohol has cooked off = alcohol cooks off, alcohol burns off
sauce thickens = sauce has thickened, sauce is thick, it thickens, it has thickened, it starts to thicken, sauce is thickened, mixture thickens, custard thickens, it gets thick
sauce coats the pasta
water runs clear = water is clear, water comes out clear
seeds pop = seeds start to pop, mustard seeds pop, seeds crackle, they start popping, they pop, popping stops, popping slows
garlic is fragrant = garlic smells fragrant, you can smell the garlic
spices are fragrant = spices smell fragrant, you can smell them, you can smell it, it smells amazing, you can smell the spices : smell
it smells nutty = they smell nutty, smells nutty : smell
it smells fragrant = it's fragrant, they're fragrant : smell
onions soften = onion softens, onions are soft, onion is soft, onions have softened, onions are translucent, onion is translucent, onions turn translucent, onions are golden, onions caramelise, onions caramelize
vegetables are tender = vegetables soften, vegetables are soft, veg is soft, veg is tender
potatoes are tender = potatoes are soft, potatoes are cooked
pasta is al dente = pasta is cooked
rice is tender = rice is cooked, rice is fluffy
noodles are tender = noodles are soft
beans are tender = beans are soft, lentils are soft, lentils are tender
tomatoes break down = tomatoes collapse, tomatoes burst, they break down, they burst, they collapse
berries burst = fruit breaks down
leaves wilt = spinach wilts, greens wilt, it wilts, they wilt, it's wilted
dough rises = it rises, it has risen, it's risen
dough is smooth = dough is smooth and elastic, it's smooth and elastic
dough doubles = dough has doubled, dough has doubled in size, it doubles, it doubles in size, it has doubled in size, it's doubled in size, it's doubled
it floats = they float, they float to the top, they rise to the surface, they bob to the top, they float to the surface : ambiguous
a drop of water sizzles = water sizzles, water dances
a cube of bread browns = bread browns, a piece of bread browns, bread sizzles
it sets = they set, it has set, it's set, it sets up
it firms up = they firm up, it's firm
jam sets = it wrinkles when pushed, it wrinkles, a drop wrinkles on a cold plate, it reaches setting point, setting point is reached
it turns golden = they turn golden, it goes golden, they go golden, turns golden, it turns golden brown, they turn golden brown, it gets golden : colour
it turns brown = they brown, it browns, they turn brown : colour
it turns white = they turn white, it goes white : colour
it turns translucent = they turn translucent, they go translucent, they're translucent : colour
it changes colour = they change colour, it changes color, they change color : colour
it darkens = they darken, it turns dark : colour
it turns amber = it goes amber, it's amber : colour
it's golden = they're golden, it is golden, they are golden : colour
it's golden brown = they're golden brown : colour
it's soft = they're soft, they are soft, it softens, they soften
it's tender = they're tender, they are tender
it's crisp = they're crisp, it's crispy, they're crispy, it crisps up, they crisp up
it's smooth = it is smooth
it's combined = it's all combined, everything's combined, everything is combined, it all comes together, everything comes together
it's cooked through = they're cooked through, it's cooked, they're cooked, it is cooked through, they are cooked through : meat
it's hot = it gets hot, it's nice and hot
it's done = they're done, it is done, they are done, it's ready, they're ready : weak
you're happy with it = you like it, it tastes right, it looks right, it looks good, you're happy : weak
peaks form : mixture
timer goes off = timer beeps : weak

# ---- heat levels ---------------------------------------------------------

@ HEATLEVEL
low
very low
lowest : write=very-low
really low : write=very-low
super low : write=very-low
low-ish = lowish, low ish : write=low
fairly low : write=low
quite low : write=low
nice and low : write=low
low flame : write=low
medium-low = medium low, low-medium, low medium, low to medium, medium to low
medium-lowish : write=medium-low
medium
mid : write=medium
middling : write=medium
moderate
medium-ish = mediumish, medium ish : write=medium
moderately high : write=medium-high
moderately low : write=medium-low
moderately hot : write=medium-high
medium-high = medium high, high-medium, medium to high, high to medium
medium-highish : write=medium-high
fairly high : write=high
quite high : write=high
high-ish = highish, high ish : write=high
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
