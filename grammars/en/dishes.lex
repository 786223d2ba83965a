# Heads of dish names, and of the parts that dishes are put together from.

@ DISH noun
soup
stew
chowder
broth : ambiguous
bisque
gumbo
jambalaya
chili = chilli : ambiguous
curry : ambiguous
dal = daal, dhal, dahl : ambiguous
sambar
rasam
korma
biryani
pilaf = pilau, pulao, pilaff
risotto
paella
pasta : ambiguous
spaghetti : ambiguous
lasagne = lasagna : ambiguous
carbonara
bolognese
ragu = ragù
mac and cheese = macaroni and cheese, mac n cheese
macaroni cheese
noodle : ambiguous
stir-fry = stir fry
fried rice
pad
ramen
pho
casserole
bake : ambiguous
traybake = tray bake
gratin
hotpot = hot pot
roast : ambiguous
pot roast
sunday roast
meatloaf
meatball
burger
cheeseburger
slider
sandwich
toastie
grilled cheese
wrap
burrito
taco
enchilada
quesadilla
fajita
nacho
tostada
empanada
pasty
samosa
pakora
bhaji
dosa
idli
upma
poha
kebab = kabob
skewer : ambiguous
satay
souvlaki
gyro
shawarma
falafel : ambiguous
hummus
pizza
calzone
focaccia
flatbread
naan : ambiguous
roti : ambiguous
chapati : ambiguous
paratha
puri
bread : ambiguous
loaf : ambiguous
sourdough
cornbread
soda bread
banana bread
bun : ambiguous
roll : ambiguous
bagel : ambiguous
pretzel : ambiguous
scone
biscuit : ambiguous
muffin
cupcake
cake
sponge : ambiguous
brownie
blondie
cookie
shortbread
flapjack
bar : ambiguous
tart
tartlet
pie
quiche
galette
crumble
cobbler
crisp : ambiguous
pudding
trifle
custard : ambiguous
mousse
panna cotta
cheesecake
meringue
pavlova
soufflé
ice cream
sorbet
gelato
granita
sundae
jam : ambiguous
marmalade
jelly : ambiguous
chutney : ambiguous
pickle : ambiguous
relish
kimchi
sauerkraut : ambiguous
fudge
toffee : ambiguous
caramel : ambiguous
brittle
praline
truffle : ambiguous
marshmallow : ambiguous
pancake
waffle
crepe = crêpe
french toast
omelette = omelet
frittata
tortilla : ambiguous
scrambled eggs = scrambled egg : mass
shakshuka
porridge
overnight oats : mass
oatmeal : ambiguous
granola
salad
slaw = coleslaw
tabbouleh
potato salad
fish and chips : mass
fishcake = fish cake
fish pie
fish finger
chowder
ceviche
schnitzel
cutlet : ambiguous
chop : ambiguous
steak : ambiguous
rib : ambiguous
wing : ambiguous
thigh : ambiguous
drumstick : ambiguous
fritter
hash
hash brown
latke
rösti = rosti
croquette
dumpling
gnocchi
ravioli : ambiguous
wonton
gyoza
spring roll
egg roll
sushi
poke bowl
rice bowl
bowl : ambiguous
moussaka
tagine
goulash
stroganoff
bourguignon
coq au vin
cassoulet
ratatouille
cottage pie
shepherd's pie
pot pie
toad in the hole
yorkshire pudding
bubble and squeak
mash : ambiguous
mashed potato = mashed potatoes
crushed potato
roast potato = roasted potatoes, roast potatoes
jacket potato
baked potato
wedge : ambiguous
fries : mass
chip : ambiguous
baked beans : mass
refried beans : mass
black beans : mass
rice : ambiguous
dip : ambiguous
guacamole
salsa : ambiguous
smoothie
lemonade
cocktail
punch : ambiguous
hot chocolate
chai
lassi
confit
terrine
pâté : ambiguous
ceviche
drizzle cake
fudge sundae
knot
twist : ambiguous
dish : ambiguous
dessert
supper : ambiguous
starter
side dish

@ PARTHEAD noun
sauce
gravy
dressing
vinaigrette
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
dough
batter
pastry
crust
base
crumb
breadcrumb topping
crumb topping
crumble topping
streusel
syrup
drizzle
dip
salsa
pico de gallo
pico
guacamole
relish
chutney
pickle
slaw
coleslaw
crema
aioli
mayo
mayonnaise
pesto
chimichurri
paste
spice mix
spice rub
spice blend
seasoning mix
seasoning
masala
tadka = tarka, tempering
roux
custard
cream
compote
coulis
jam
caramel
butter
dredge
coating
breading
garnish
croutons : mass
raita
wash
assembly

@ DISHMOD
spicy
classic
simple
quick
easy
homemade
creamy
crispy
cheesy
crunchy
sticky
warm
hot
cold
fluffy
vegan
vegetarian
veggie
sunday
weeknight
overnight
one-pot = one pot
one-pan = one pan
pan-fried
pan-seared
slow-cooker
slow-cooked
pressure-cooker
air-fryer = air fryer
oven-baked
no-bake
no-knead
double
triple
mini
giant
upside-down
pulled
loaded
stuffed
buffalo
honey
teriyaki
cajun
thai
indian
italian
mexican
greek
french
korean
chinese
japanese
moroccan
spanish
hungarian
english
irish
scottish
southern
american
