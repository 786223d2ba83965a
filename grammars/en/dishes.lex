# Heads of dish names, the parts that dishes are put together from, and the
# words that a title keeps or drops.
#
# DISH      the last word of a dish's name
# DISHFOOD  the same, but as often a food or a plain word
# PARTHEAD  the last word of a part's name; weak: only with a word before it;
#           raw: "scone dough" is the scones; wet: goes
#           on or into what holds the dish
# DISHMOD   goes before them; praise: left out of the title
# proper    begins with a capital letter

# ---- soups, stews, curries -------------------------------------------------
@ DISH noun
soup
stew
chowder
bisque
gumbo
jambalaya
étouffée = etouffee
chili con carne = chilli con carne
cioppino
bouillabaisse
minestrone
gazpacho
vichyssoise
borscht
goulash
pozole = posole
menudo
laksa
tom yum
pho : mass
ramen : mass
dal tadka = dal tarka, tadka dal, tarka dal
dal makhani
chana masala = chole, channa masala
curry
rajma
sambar
sambhar
rasam
korma
vindaloo
jalfrezi
dopiaza
madras
rogan josh
biryani
butter chicken : mass
tikka masala
chicken tikka
aloo gobi : mass
palak paneer : mass
saag paneer : mass
matar paneer = mutter paneer : mass
saag
sabzi = sabji, subzi
bhaji
bhuna
kofta
keema
pilaf = pilau, pulao, pilaff
khichdi = khichri
kedgeree
tagine
stroganoff
bourguignon
coq au vin
cassoulet
ratatouille
fricassee
casserole
hotpot = hot pot
irish stew : proper
scotch broth : proper
fish stew
braise
ragu = ragù
bolognese
adobo
rendang
satay
birria
mole
barbacoa
carne asada : mass
carnitas : mass
@ DISHFOOD noun
ranch : mass
patty
broth
chili = chilli
dal = daal, dhal, dahl

# ---- pasta, rice, noodles --------------------------------------------------
@ DISH noun
spaghetti and meatballs
spaghetti bolognese = spag bol
lasagne = lasagna
carbonara
alfredo
puttanesca
arrabbiata
cacio e pepe
aglio e olio
primavera
scampi
mac and cheese = macaroni and cheese, mac n cheese, mac 'n' cheese
macaroni cheese
pasta bake
ziti
cannelloni
manicotti
risotto
paella
arancini
fried rice
rice and peas : mass
rice and beans : mass
dirty rice : mass
pad thai
lo mein
chow mein
stir-fry = stir fry
yakisoba
teriyaki
donburi
bibimbap
japchae
bulgogi
sushi : mass
onigiri
poke bowl
rice bowl
grain bowl
@ DISHFOOD noun
pasta
spaghetti
penne
rigatoni
linguine
fettuccine
orzo
ravioli
gnocchi
noodle
poke
bowl : meal
couscous

# ---- bakes, roasts, plates -------------------------------------------------
@ DISH noun
traybake = tray bake, tray-bake
sheet pan dinner
gratin
dauphinoise = dauphinoises
moussaka
parmigiana
parmesan chicken
meatloaf = meat loaf : plural=meatloaves
meatball
burger
cheeseburger
hamburger
slider
sloppy joe
pot roast
roast dinner
sunday roast
roast chicken : mass
roast lamb : mass
yorkshire pudding : proper
yorkshire = yorkie : proper
toad in the hole
bubble and squeak
shepherd's pie
cottage pie
fish pie
pot pie
steak pie
pasty
cornish pasty : proper
sausage roll
quiche
welsh rarebit : proper
rarebit
poutine
dauphinoise potato
spätzle = spaetzle, käsespätzle : mass
saag aloo : mass
beef wellington : mass
steak diane : mass
chicken kiev
peach melba
eggs florentine : mass
piccata
milanese
marsala
thermidor
saltimbocca
jollof rice : mass
scotch egg : proper
fishcake = fish cake
crab cake
fish finger
fish and chips : mass
chicken and dumplings : mass
chicken and waffles : mass
biscuits and gravy : mass
shrimp and grits : mass
sausage and mash : mass
pie and mash : mass
egg and chips : mass
liver and onions : mass
beans on toast : mass
cheese on toast : mass
eggs on toast : mass
ham and eggs : mass
goujon
schnitzel
parmy = parmi, parma
kiev
pulled pork : mass
rissole
kebab = kabob
souvlaki
gyro
shawarma
katsu
tempura
confit
terrine
ceviche
carpaccio
croquette
fritter
latke
rösti = rosti
hash
hash brown
corned beef hash
bangers and mash : mass
full english : proper
fry-up = fry up
cabbage roll
stuffed pepper
stir-fried vegetable
roasted vegetable = roast vegetable, roast veg, roasted veg, roasted veggies, roast veggies, roasted veggie
roasted carrot = roast carrot
roasted cauliflower = roast cauliflower
roast potato = roasted potatoes, roast potatoes, roasties, roastie
jacket potato
baked potato
loaded potato
mashed potato = mashed potatoes, creamed potatoes
crushed potato
smashed potato
hasselback potato
scalloped potato
fries : mass
french fries : mass
onion ring
baked beans : mass
refried beans : mass
succotash
creamed spinach : mass
creamed corn : mass
skillet corn : mass
street corn = elote : mass
hush puppy
@ DISHFOOD noun
bake
roast : meal
roast beef
nugget
cutlet
chop
steak
rib
wing
thigh
drumstick
tender
brisket
skewer
falafel
pâté = pate
tartare
mash
wedge
chip
black beans : mass
green beans : mass
collard greens = collards : mass
grits : mass
polenta
rice
bean

# ---- sandwiches, wraps, filled doughs --------------------------------------
@ DISH noun
sandwich
sarnie
butty
toastie
grilled cheese
panini
club sandwich
reuben : proper
po' boy = po boy, po'boy
hot dog
burrito
taco
enchilada
quesadilla
fajita
nacho
tostada
taquito
chilaquiles : mass
huevos rancheros : mass
tamale
empanada
pupusa
arepa
samosa
pakora
dosa
idli
vada
uttapam
upma
poha
bhel puri
pav bhaji
paratha
aloo paratha
puri
thepla
dumpling
potsticker = pot sticker
wonton
gyoza
bao
spring roll
egg roll
summer roll
pierogi
calzone
stromboli
pizza
flatbread
tart
tartlet
galette
bruschetta
crostini
@ DISHFOOD noun
melt
wrap
chaat

# ---- eggs, breakfast, salads, small plates ---------------------------------
@ DISH noun
omelette = omelet
frittata
scrambled eggs = scrambled egg : mass
poached eggs = poached egg : mass
fried eggs = fried egg : mass
deviled egg = devilled egg
eggs benedict : mass
shakshuka
strata
breakfast casserole
porridge
overnight oats : mass
granola
smoothie
pancake
waffle
crepe = crêpe
french toast : mass
hotcake
pikelet
crumpet
salad
caesar salad : proper
potato salad
pasta salad
egg salad
chicken salad
tuna salad
greek salad : proper
waldorf salad : proper
cobb salad : proper
niçoise = nicoise
slaw = coleslaw
tabbouleh = tabouli, tabouleh
fattoush
kachumber = kachumbari
koshimbir
panzanella
caprese
raita
hummus = houmous
baba ganoush = baba ghanoush
tzatziki
guacamole = guac
pico de gallo
kimchi
chutney
piccalilli
marmalade
@ DISHFOOD noun
tortilla
boiled eggs : mass
oatmeal
muesli
salsa
queso
sauerkraut
pickle
pickled onion
relish
jam
jelly
preserve
curd

# ---- breads ----------------------------------------------------------------
@ DISH noun
sourdough
focaccia
challah
cornbread
soda bread
banana bread
monkey bread
hot cross bun
cinnamon roll
cinnamon bun
cinnamon twist
dinner roll
breadstick
scone
bannock
doughnut = donut
churro
beignet
@ DISHFOOD noun
bread
loaf : plural=loaves
ciabatta
brioche
naan
roti
chapati
pita
garlic bread
bun
roll
bagel
pretzel
biscuit
damper
knot
twist

# ---- puddings, cakes, sweets -----------------------------------------------
@ DISH noun
muffin
cupcake
fairy cake
butterfly cake
cake
cheesecake
victoria sponge = victoria sandwich : proper
gingerbread
parkin
brownie
blondie
cookie
snickerdoodle
shortbread
flapjack
rock cake
rocky road
tiffin
anzac biscuit : proper
lamington
pie
cobbler
clafoutis
pudding
bread and butter pudding
sticky toffee pudding
rice pudding
trifle
eton mess : proper
syllabub
posset
mousse
crème brûlée = creme brulee
crème caramel = creme caramel
panna cotta
tiramisu
meringue
pavlova = pav
soufflé
roulade
swiss roll : proper
bakewell tart : proper
éclair = eclair
profiterole
cream puff
baklava
strudel
ice cream
sorbet
gelato
granita
sherbet
ice lolly
popsicle
sundae
milkshake
fudge
barfi = burfi
ladoo = laddu
halwa
kheer
gulab jamun
jalebi
kulfi
shrikhand
mithai
@ DISHFOOD noun
sponge
slice
bar
ball
bite
crumble
crisp
buckle
betty
fool
turnover
float
toffee
brittle
honeycomb
praline
truffle
marshmallow
candy

# ---- drinks and meals ------------------------------------------------------
@ DISH noun
lemonade
iced tea
cocktail
mocktail
mulled wine : mass
hot chocolate : mass
chai
lassi
kombucha
margarita
sangria : mass
@ DISHFOOD noun
punch
dish : meal
dessert : meal
supper : meal
dinner : meal
starter : meal
side dish : meal
platter : meal
board : meal

# ---- parts -----------------------------------------------------------------
@ PARTHEAD noun
sauce : wet
gravy : wet
dressing : wet
vinaigrette : wet
marinade
brine
rub
glaze
icing
frosting
buttercream
ganache
topping
filling
stuffing
dough : raw
batter : raw
pastry
crust
streusel
breadcrumb topping
crumb topping
crumble topping
crumb : weak
crumble : weak
base : weak
syrup
drizzle
dip : wet
salsa : wet
pico de gallo = pico : wet
guacamole = guac : wet
relish : wet
chutney : wet
pickle : wet
slaw = coleslaw : wet
crema : wet
aioli : wet
mayo = mayonnaise : wet
pesto : wet
chimichurri : wet
gremolata : wet
salsa verde : wet
tapenade : wet
paste : weak
spice mix
spice rub
spice blend
dry rub
wet rub
masala
masala paste
curry paste
seasoning mix
seasoning : weak
mix : weak raw
mixture : weak raw
tadka = tarka, tempering
sofrito
roux
béchamel = bechamel
custard
cream : weak
compote
coulis
caramel
butter : weak
curd : weak
dredge
coating
breading
breadcrumb : weak
crouton
crispy onion
raita : wet
tzatziki : wet
hummus : wet
assembly
patty
ranch : mass wet
meringue
swirl
ripple
sponge : weak
layer : weak
shell : weak
skewer : weak
salad : weak
hollandaise : mass
béarnaise : mass
beurre blanc : mass
velouté
mornay
remoulade = rémoulade
romesco : mass
rouille : mass
persillade : mass
pistou : mass
mignonette
pebre : mass
guasacaca : mass
mojo
zhoug = schug, zhug : mass
shatta : mass
toum : mass
chermoula : mass
dukkah = duqqa : mass
sambol
nuoc cham = nước chấm : mass
nam jim : mass
duxelles : mass
pangrattato : mass
chaunk = chhonk, chonk : mass
baghar : mass
vaghar : mass
birista : mass
jus : mass
gastrique
reduction : weak
infusion : weak
cure : weak
pickling liquid
praline : weak
crème pâtissière = creme patissiere, crème pat, creme pat : mass
crème anglaise : mass
chantilly : mass
frangipane : mass
nappage : mass
tuile
meringue top
pie top
pie lid
pastry lid
pastry case
tart case
biscuit base
cookie base
crumb base
tangzhong : mass
poolish : mass
biga
levain : mass
preferment
wet ingredient
dry ingredient

# ---- words of names ----------------------------------------------------------
@ DISHMOD
drop
buttered
sous vide = sous-vide
slow roast
spicy
homemade = home-made
creamy
crispy
crunchy
cheesy
sticky
warm
hot
cold
fluffy
chewy
fudgy
gooey
zesty
vegan
vegetarian
veggie
gluten-free
dairy-free
weeknight
overnight
one-pot = one pot
one-pan = one pan
sheet-pan = sheet pan
pan-fried
pan-seared
slow-cooker = slow cooker, crockpot, crock pot
slow-cooked
pressure-cooker = pressure cooker, instant pot
air-fryer = air fryer
oven-baked
oven-roasted
beer-battered
no-bake
icebox
freezer
fridge
no-knead
double
triple
mini
upside-down
pulled
loaded
stuffed
smashed
crushed
buffalo
bbq = barbecue
honey
teriyaki
tikka
tandoori
masala
jeera
aloo
gobi
palak
paneer
jerk
lemon pepper
sweet and sour
thai basil : proper
birthday
breakfast
party
campfire
@ DISHMOD proper
sunday
christmas
cajun
creole
caesar
thai
indian
italian
mexican
greek
french
korean
chinese
japanese
vietnamese
moroccan
spanish
hungarian
swedish
polish
russian
german
turkish
lebanese
persian
ethiopian
jamaican
cuban
brazilian
english
irish
scottish
welsh
cornish
yorkshire
lancashire
swiss
danish
dutch
belgian
australian
american
hawaiian
texan
kashmiri
punjabi
goan
bengali
hyderabadi
mediterranean
asian
@ DISHMOD praise
quick
easy
quick and easy
super quick
super easy
real quick
speedy
simple
simple little
basic
regular
old
plain
little
big
old-fashioned
bog-standard
small
large
special
dead plain
dead simple
dead easy
very own
hearty
cosy = cozy
festive
ultimate
signature
go-to
cheat's
lazy
impromptu
sneaky
