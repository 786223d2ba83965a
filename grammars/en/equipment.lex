# What cooks cook with. Food words inside a tool's name ("butter dish", "cake
# tin") stand here whole, so that they name no food.
#
# kind=       appliance hob pan pot dish tin tray bowl board knife utensil
#             thermometer rack paper container machine
# setting     it has a temperature or a heat level to set
# sized       the recipe needs its size
# appliance=  the heat that it is: oven stove grill fryer air-fryer smoker
#             water-bath slow-cooker pressure-cooker microwave toaster steamer
#             barbecue proofer
# implies=    the heat that it stands on or in unless another is named
# same=       one key for regional names of one thing
# ambiguous   also a food, a verb or an everyday word
# part        a part of a kitchen or an appliance, not a tool to list

# ---- appliances and heat -------------------------------------------------

@ EQUIP noun kind=appliance setting appliance=oven
oven
fan oven
fan-assisted oven
convection oven
conventional oven
electric oven
gas oven
steam oven : ambiguous
combi oven
wall oven
double oven
range : ambiguous
range cooker
toaster oven : same=mini-oven
mini oven : same=mini-oven
countertop oven : same=mini-oven
otg : same=mini-oven
pizza oven
wood-fired oven
wood oven
bread oven
clay oven
tandoor
tandoor oven
cooker : ambiguous

@ EQUIP noun kind=hob setting appliance=stove
stove
stovetop = stove top
hob
hotplate = hot plate
cooktop = cook top
saute setting = saute mode, saute function, saute program, saute programme, saute button
gas hob
gas stove
gas ring
gas burner
induction hob
induction cooktop
induction plate
electric hob
burner
back burner
front burner
ring : ambiguous
flame : ambiguous
naked flame : mass
open flame
camp stove
camping stove
portable stove
back of the stove : mass
hearth
campfire
fire : ambiguous

@ EQUIP noun kind=appliance setting
grill : appliance=grill ambiguous
overhead grill : appliance=grill
oven grill : appliance=grill
top grill : appliance=grill
broiler : appliance=grill
contact grill : appliance=grill
panini press : appliance=grill
sandwich press : appliance=grill
sandwich toaster : appliance=grill
toastie maker : appliance=grill
toasted sandwich maker : appliance=grill
barbecue = barbeque, bbq, barbie : appliance=barbecue ambiguous
charcoal grill : appliance=barbecue
charcoal barbecue : appliance=barbecue
gas grill : appliance=barbecue
gas barbecue : appliance=barbecue
pellet grill : appliance=barbecue
kettle grill : appliance=barbecue
kettle barbecue : appliance=barbecue
kamado : appliance=barbecue
braai : appliance=barbecue
hibachi : appliance=barbecue
yakitori grill : appliance=barbecue
fire pit : appliance=barbecue
rotisserie : appliance=barbecue
spit : appliance=barbecue ambiguous
deep fryer = deep fat fryer : appliance=fryer
fryer : appliance=fryer
chip pan : appliance=fryer sized
turkey fryer : appliance=fryer
air fryer = airfryer : appliance=air-fryer
air-fryer oven : appliance=air-fryer
smoker : appliance=smoker
offset smoker : appliance=smoker
pellet smoker : appliance=smoker
stovetop smoker : appliance=smoker
smoke box : appliance=smoker
water bath : appliance=water-bath
sous-vide machine : appliance=water-bath
sous-vide stick : appliance=water-bath
immersion circulator : appliance=water-bath
circulator : appliance=water-bath
slow cooker : appliance=slow-cooker
crock : appliance=slow-cooker ambiguous
multicooker = multi-cooker : appliance=pressure-cooker
pressure cooker : appliance=pressure-cooker sized
electric pressure cooker : appliance=pressure-cooker
stovetop pressure cooker : appliance=pressure-cooker
microwave : appliance=microwave ambiguous
microwave oven : appliance=microwave
toaster : appliance=toaster
proofer : appliance=proofer
proving drawer : appliance=proofer
proving box : appliance=proofer
proofing box : appliance=proofer
proving oven : appliance=proofer
warming drawer : appliance=oven
hot cupboard : appliance=proofer
airing cupboard : appliance=proofer
dehydrator : appliance=dehydrator
electric griddle : appliance=stove
electric skillet : appliance=stove
electric frying pan : appliance=stove
raclette grill : appliance=grill

@ EQUIP noun kind=appliance
steamer : appliance=steamer
electric steamer : appliance=steamer
bamboo steamer : appliance=steamer
steamer basket : appliance=steamer
steaming basket : appliance=steamer
steamer insert : appliance=steamer
idli steamer : appliance=steamer
idli stand : appliance=steamer
couscoussier : appliance=steamer
double boiler : appliance=steamer same=bain-marie
bain-marie : appliance=steamer same=bain-marie
rice cooker : appliance=rice-cooker
egg boiler : appliance=egg-cooker
egg cooker : appliance=egg-cooker
waffle iron : appliance=waffle-iron
waffle maker : appliance=waffle-iron
pizzelle iron : appliance=waffle-iron
crepe maker : appliance=stove
bread machine : appliance=bread-machine
bread maker = breadmaker : appliance=bread-machine
popcorn maker
popcorn machine
ice cream maker
ice cream machine
yogurt maker = yoghurt maker
kettle
electric kettle
coffee machine
coffee maker
fridge
refrigerator
freezer
deep freeze
chest freezer
ice box
blast chiller
salad drawer : part
crisper drawer : part
fridge door : part
dishwasher
blowtorch = blow torch : ambiguous
kitchen torch
cook's torch
gas torch
plate warmer

@ EQUIP noun kind=appliance part
oven door
oven rack
oven shelf : plural=shelves
top shelf : plural=shelves
middle shelf : plural=shelves
bottom shelf : plural=shelves
top rack
middle rack
bottom rack
lower rack
upper rack
centre rack = center rack
oven floor
air fryer basket
air fryer tray
air fryer drawer
fryer basket
frying basket
basket : ambiguous
drip pan
drip tray
crumb tray
grill grate
grate : ambiguous
grill pan tray
fan : ambiguous
fan setting
thermostat
timer : kind=utensil
oven timer : kind=utensil
kitchen timer : kind=utensil
egg timer : kind=utensil
countertop : kind=board
counter : kind=board
counter top : kind=board
worktop : kind=board
work top : kind=board
worksurface = work surface : kind=board
work bench : kind=board
bench : kind=board
kitchen counter : kind=board
surface : ambiguous kind=board
table : kind=board
sink
tap : ambiguous
faucet
windowsill = window sill

# ---- pans and pots -------------------------------------------------------

@ EQUIP noun kind=pan sized implies=stove
pan
frying pan : same=frying-pan
fry pan : same=frying-pan
skillet : same=frying-pan
cast-iron skillet = cast-iron pan
cast-iron frying pan
cast iron : mass
non-stick pan = nonstick pan
non-stick frying pan = nonstick frying pan
nonstick skillet = non-stick skillet
omelette pan
crepe pan
pancake pan
blini pan
egg pan
poffertjes pan
æbleskiver pan
paniyaram pan
appam pan
appe pan
sauté pan
grill pan
griddle : ambiguous
griddle pan
ridged griddle
flat-top = flattop
plancha
comal
tawa
tava
kadai = kadhai, karahi
wok
uruli
paella pan
paellera
saucier pan
chestnut pan
fajita pan
fish kettle

@ EQUIP noun kind=pot sized implies=stove
pot : ambiguous
saucepan = sauce pan
small pan
milk pan
milk pot
pasta pot
pasta pan
pasta cooker
soup pot
stockpot = stock pot
stew pot
stewpot
jam pan
preserving pan
maslin pan
canner
water-bath canner
pressure canner
canning pot
candy pot
sugar pan
butter warmer
egg poacher
egg poaching pan
asparagus steamer
tadka pan
handi
degchi
patila
pateela
topia
donabe
cauldron
potjie

@ EQUIP noun kind=pot sized
dutch oven
french oven
casserole pot
casserole pan
flameproof casserole
cast-iron casserole
cocotte
braiser
braising pan
braising pot
clay pot
bean pot
tagine = tajine : ambiguous
tagine pot
ovenproof pan = oven-proof pan, oven-safe pan, ovensafe pan
ovenproof skillet = oven-proof skillet, oven-safe skillet
ovenproof frying pan = oven-proof frying pan

# ---- dishes, tins and trays ----------------------------------------------

@ EQUIP noun kind=dish sized implies=oven
baking dish
casserole dish
casserole : ambiguous
oven dish
ovenproof dish = oven-proof dish, oven-safe dish
roasting dish
gratin dish
gratin
lasagne dish = lasagna dish
lasagna pan
pie dish
pie plate
pie pan
quiche dish
soufflé dish
flan dish
glass dish
ceramic dish
enamel dish
earthenware dish
terrine dish
terrine mould = terrine mold
pudding basin
pudding bowl
ramekin
custard cup
cassole
cazuela
dariole mould = dariole mold
pot pie dish
shallow dish
deep dish

@ EQUIP noun kind=dish
dish : ambiguous
serving dish
butter dish
gravy boat
sauce boat
soap dish
plate : ambiguous
dinner plate
side plate
serving plate
serving platter
platter
saucer
egg cup
egg plate
cake stand
cake plate
cake dome
cake board
cheese dish
cheese dome
cereal bowl : kind=bowl
soup bowl : kind=bowl
soup plate
pasta bowl : kind=bowl
rice bowl : kind=bowl
salad bowl : kind=bowl
fruit bowl : kind=bowl
sugar bowl : kind=bowl
dessert bowl : kind=bowl
thali
toast rack : kind=rack
salt cellar
salt pig
salt shaker
pepper pot
pepper shaker
oil bottle
oil drizzler
cruet
mustard pot
honey pot
jam jar
jam pot
cream jug
milk jug
tea cup = teacup
coffee cup
coffee mug
mug : ambiguous
teapot
coffee pot
wine glass
glass : plural=glasses ambiguous
tumbler
shot glass
cocktail glass
cocktail shaker
highball glass
pint glass
sundae glass
martini glass
lunch box
bento box

@ EQUIP noun kind=tin sized implies=oven
tin : ambiguous
cake tin
cake pan
cake mould = cake mold
round tin
round cake tin
round cake pan
square tin
square cake tin
square pan
brownie tin
brownie pan
sandwich tin
springform
springform tin = spring-form tin
springform pan = spring-form pan
loose-bottomed tin
loose-bottomed cake tin
loose-bottomed tart tin
loaf tin
loaf pan
bread tin
bread pan
pullman pan
pain de mie tin
tart tin
tart pan
tart ring
tartlet tin
tartlet pan
flan tin
flan ring
quiche tin
quiche pan
pie tin
muffin tin
muffin pan
muffin tray
cupcake tin
cupcake pan
bun tin
fairy cake tin
mince pie tin
yorkshire pudding tin
popover pan
madeleine tin
madeleine pan
financier mould = financier mold
canelé mould = canelé mold, cannelé mould
ring mould = ring mold
ring tin
tube pan
angel food pan
angel food cake pan
bundt tin
bundt pan
bundt
kugelhopf mould = kugelhopf mold
brioche mould = brioche mold
brioche tin
charlotte mould = charlotte mold
savarin mould = savarin mold
jelly mould = jelly mold
chocolate mould = chocolate mold
silicone mould = silicone mold
mould : same=mould ambiguous
mold : same=mould ambiguous
baking tin
baking pan
roasting tin
roasting pan
roaster
roasting tray
traybake tin
sheet cake pan
swiss roll tin
jelly roll pan
pizza pan
pizza tray
deep-dish pan
sheet pan
half-sheet pan
quarter-sheet pan
quarter sheet
half sheet
tray : ambiguous

@ EQUIP noun kind=tray implies=oven
baking tray
baking sheet
oven tray
cookie sheet
cookie tray
biscuit tray
bun tray
pizza stone
baking stone
baking steel
pizza steel
bread stone
pizza peel : kind=utensil
baguette tray
baguette pan
sheet tray
lipped tray
rimmed baking sheet
perforated tray
banneton : kind=bowl
proving basket : kind=bowl
proofing basket : kind=bowl
bread basket : kind=bowl
couche : kind=paper
cloche : kind=pot
bread cloche : kind=pot

@ EQUIP noun kind=tray
ice tray
ice cube tray
serving tray
tea tray
freezer tray
butcher's tray
defrosting tray

# ---- bowls, boards, knives, small tools ----------------------------------

@ EQUIP noun kind=bowl
bowl
mixing bowl
small bowl
large bowl
big bowl
medium bowl
heatproof bowl = heat-proof bowl
glass bowl
metal bowl
steel bowl
stainless steel bowl
ceramic bowl
mixer bowl
stand mixer bowl
prep bowl
basin
jug
measuring jug
pitcher
beaker
salad spinner
colander
sieve : ambiguous
fine sieve
fine-mesh sieve
strainer
fine-mesh strainer
chinois
tamis : plural=tamis
drum sieve
flour sieve
flour sifter
sifter
tea strainer
spice strainer
ice bucket
ice bath : ambiguous
bucket
washing-up bowl
mortar
pestle
mortar and pestle : mass
pestle and mortar : mass
molcajete
suribachi
sil batta
grinding stone
finger bowl
dough bowl

@ EQUIP noun kind=board
board
chopping board
cutting board
bread board
cheese board = cheeseboard
pastry board
carving board
butcher's block
wooden board
plastic board
serving board
chakla : kind=board
silicone mat
pastry mat
baking mat
rolling mat
sushi mat
bamboo mat

@ EQUIP noun kind=knife
knife : plural=knives
chef's knife = chefs knife, cook's knife : plural=knives
bread knife : plural=knives
serrated knife : plural=knives
paring knife : plural=knives
carving knife : plural=knives
boning knife : plural=knives
filleting knife : plural=knives
fillet knife : plural=knives
utility knife : plural=knives
palette knife : plural=knives
offset spatula
offset palette knife : plural=knives
butter knife : plural=knives
cheese knife : plural=knives
steak knife : plural=knives
oyster knife : plural=knives
tomato knife : plural=knives
grapefruit knife : plural=knives
fish knife : plural=knives
table knife : plural=knives
turning knife : plural=knives
cleaver
meat cleaver
mezzaluna
santoku
mandoline = mandolin
knife sharpener
sharpening steel
whetstone
kitchen scissors : mass
scissors : mass
pair of scissors : mass
poultry shears : mass
kitchen shears : mass
herb scissors : mass
peeler
vegetable peeler
potato peeler
y-peeler
speed peeler
julienne peeler
apple corer
corer
pineapple corer
cherry pitter
cherry stoner
olive pitter
egg slicer
cheese slicer
cheese wire
cheese grater
nutmeg grater
box grater
fine grater
grater
zester
lemon zester
citrus zester
spiraliser = spiralizer
bean slicer
pizza cutter
pizza wheel
pastry cutter
pastry wheel
cookie cutter
biscuit cutter
round cutter
scone cutter
dough cutter
dough scraper
bench scraper
bowl scraper
pastry scraper
scraper
lame : ambiguous
razor blade
ravioli cutter
pasta cutter
pasta wheel
pasta machine : kind=machine
pasta roller : kind=machine
meat slicer : kind=machine
bread slicer : kind=machine

@ EQUIP noun kind=utensil
spoon : ambiguous
wooden spoon
metal spoon
slotted spoon
serving spoon
measuring spoon
measuring cup
cup measure
spoon measure
soup spoon
honey dipper
jam spoon
mustard spoon
caviar spoon
ice cream spoon
ladle : ambiguous
soup ladle
gravy ladle
sauce ladle
spatula
rubber spatula
silicone spatula
fish spatula
fish slice
fish turner
egg slice
egg flip
turner
flipper
pancake turner
cake slice
pie server
cake server
tongs : mass
pair of tongs : mass
salad tongs : mass
salad servers : mass
sugar tongs : mass
toast tongs : mass
fork
carving fork
meat fork
pasta fork
fish fork
pastry fork
dinner fork
whisk : ambiguous
balloon whisk
hand whisk
flat whisk
egg whisk
egg beater
rotary whisk
matcha whisk
potato masher
masher
potato ricer
ricer
garlic press
garlic crusher
garlic peeler
ginger grater
lemon squeezer
lime squeezer
citrus squeezer
citrus press
citrus juicer
lemon juicer
juicer
orange squeezer
nut cracker = nutcracker
crab cracker
lobster cracker
lobster pick
crab pick
nutmeg mill
pepper mill
peppermill
pepper grinder
salt mill
salt grinder
spice grinder
spice mill
coffee grinder
grain mill
can opener
tin opener
bottle opener
corkscrew
jar opener
ice cream scoop
cookie scoop
melon baller
meat mallet
meat hammer
meat tenderiser = meat tenderizer
steak hammer
mallet
burger press
tortilla press
bacon press
meat press
grill press
tofu press
duck press
cookie press
cheese press
rolling pin
belan
pastry brush
basting brush
brush : ambiguous
silicone brush
mushroom brush
vegetable brush
bottle brush
baster
turkey baster
bulb baster
piping bag
pastry bag
icing bag
piping nozzle
piping tip
nozzle
star nozzle
pastry blender
dough hook
paddle attachment
whisk attachment
paddle : ambiguous
flour dredger
sugar shaker
flour shaker
icing sugar shaker
dredger
cake tester
skewer : ambiguous
metal skewer
wooden skewer
bamboo skewer
kebab skewer
cocktail stick
toothpick
lolly stick
ice lolly mould = ice lolly mold
chopstick
cooking chopsticks : mass
spider
spider strainer
skimmer
jhara
rice paddle
rice spoon
sushi knife : plural=knives
crumpet ring
egg ring
pastry ring
cooking ring
chef's ring
cake ring
biscuit press
butter curler
butter paddle
butter churn
egg separator
egg piercer
egg topper
fat separator
gravy separator
fish scaler
fish tweezers : mass
tweezers : mass
larding needle
trussing needle
flavour injector = flavor injector
meat injector
marinade injector
meat claws : mass
apple peeler
corn holder
corn cutter
corn stripper
strawberry huller
herb stripper
avocado slicer
salad server
pot holder
oven mitt
oven glove
oven gloves : mass
oven cloth
trivet
splatter guard
splatter screen
lid
pan lid
pot lid
glass lid
tight-fitting lid
saucepan lid
pie weight
baking beans : mass
pie weights : mass
ceramic beans : mass
pie bird
pie funnel
funnel
jam funnel
jar lifter
canning rack : kind=rack
milk frother
tea towel
kitchen towel
dish towel
dish cloth
cloth
damp cloth
clean tea towel
muslin cloth
sponge : ambiguous
spray bottle
squeezy bottle
squeeze bottle
kitchen string : mass
butcher's string : mass
kitchen twine : mass
butcher's twine : mass
string : mass ambiguous
twine : mass
glove
rubber glove

@ EQUIP noun kind=thermometer
thermometer
meat thermometer
probe thermometer
instant-read thermometer
digital thermometer
digital probe
temperature probe
meat probe
probe : ambiguous
oven thermometer
sugar thermometer
candy thermometer
jam thermometer
deep-fry thermometer
frying thermometer
oil thermometer
fat thermometer
fridge thermometer
refrigerator thermometer
infrared thermometer
leave-in thermometer
dairy thermometer
milk thermometer
wireless thermometer
scales : mass kind=utensil ambiguous
kitchen scales : mass kind=utensil
kitchen scale : kind=utensil
digital scales : mass kind=utensil
digital scale : kind=utensil
weighing scales : mass kind=utensil
set of scales : mass kind=utensil

@ EQUIP noun kind=rack
rack : ambiguous
wire rack
cooling rack
cake rack
wire cooling rack
roasting rack
oven-safe rack
v-rack
spice rack
wine rack
plate rack
dish rack
drying rack
grill rack
steaming rack
rib rack
taco holder
pizza screen
cooling grid
wire grid

# ---- paper, wraps, containers, machines ----------------------------------

@ EQUIP noun kind=paper mass
parchment
parchment paper
baking parchment
baking paper
greaseproof paper
greaseproof
wax paper
waxed paper
butter paper
silicone paper
foil
tin foil
tinfoil
aluminium foil : same=foil
aluminum foil : same=foil
kitchen foil
cling film = clingfilm
cling wrap
plastic wrap
beeswax wrap
kitchen paper : same=kitchen-paper
kitchen roll : same=kitchen-paper
paper towel : same=kitchen-paper
paper towels : same=kitchen-paper
kitchen towels
muslin
cheesecloth = cheese cloth
coffee filter
cake liner
muffin case
muffin cases
muffin liner
muffin liners
cupcake case
cupcake cases
cupcake liner
cupcake liners
paper case
paper cases
bun case
bun cases
tin liner
air fryer liner
slow cooker liner
cartouche
lolly sticks
butcher's paper
brown paper
newspaper
doily

@ EQUIP noun kind=container
airtight container
air-tight container
storage container
freezer container
plastic container
plastic tub
container : ambiguous
tub : ambiguous
zip-lock bag = ziplock bag, zip-top bag, ziptop bag
resealable bag
freezer bag
sandwich bag
plastic bag
paper bag
roasting bag
oven bag
vacuum bag
sous-vide bag
boiling bag
nut milk bag
jelly bag
jam bag
straining bag
pudding cloth
jar : ambiguous
canning jar
mason jar
screw-top jar
clip-top jar
preserving jar
pickle jar
glass jar
cookie jar
biscuit tin
biscuit barrel
cookie tin
cake box
cake tin lid
bread bin
bread box
egg box
egg carton
milk carton
milk bottle
wine bottle
salad box
spice jar
spice tin
masala dabba
spice box
flour bin
rice bin
tea caddy
fruit basket
vegetable box
ice pack
cool box
cool bag
vacuum flask
bottle : ambiguous
stubby : plural=stubbies ambiguous
tinnie : ambiguous

@ EQUIP noun kind=machine
food processor
processor
mini food processor
mini chopper
chopper
blender
stand blender
jug blender
high-speed blender
hand blender : same=stick-blender
stick blender : same=stick-blender
immersion blender : same=stick-blender
smoothie maker
liquidiser = liquidizer
stand mixer
hand mixer
electric mixer
electric whisk
electric hand whisk
electric beater
handheld mixer
handheld whisk
mixer : ambiguous
mixie
mixer grinder
wet grinder
blender jug
meat grinder
meat mincer
mincer
sausage stuffer
sausage maker
food mill
vegetable mill
juice extractor
ice crusher
vacuum sealer
siphon
cream whipper
cream siphon
soda siphon
soda maker
soup maker
soy milk maker
tofu maker
noodle machine
chip cutter
chip basket
cake turntable
turntable
cotton candy machine
chocolate fountain
fondue set
fondue pot : kind=pot
smoking gun
