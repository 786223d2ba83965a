# Bread, crumbs, pastry, cakes, biscuits and crackers that a cook buys ready.

# Bread
@ FOOD noun group=bread kind=bread
almond croissant : group=pastry
arabic bread
arepa
artisan bread : mass
bagel : dish
baguette
baguette slice : key=baguette
baguettes
bammy
bao : kind=bun key=bao-bun
bao bun : kind=bun key=bao-bun
bap : kind=roll ambiguous
bara brith : mass
barbari bread
barmbrack : mass
beer bread : mass
belgian waffle : group=prepared proper=1
bhatura
bloomer : mass ambiguous
blue corn tortilla : kind=tortilla
bolillo : kind=roll
bread = breads : mass dish
bread bowl
bread crust
bread end
bread loaf : mass
bread roll : kind=roll key=bread-roll
bread slice : mass
breakfast muffin : kind=muffin key=english-muffin
bridge roll : kind=roll
brioche : mass dish
brioche bread : mass
brioche bun : kind=bun
brioche burger bun : kind=bun
brioche loaf : mass
brown bread : mass key=wholemeal-bread
brown soda bread : mass
bruschetta : mass key=crostini dish
bruschetta bread : mass
bruschetta toast : mass
bruschettas : mass
buckwheat crêpe : group=prepared
bun : ambiguous dish
burger bun : kind=bun key=burger-bun
burrito-size flour tortilla : kind=tortilla
burrito-size tortilla : kind=tortilla
butter croissant
challah = cholla : mass
challah bread : mass
challah loaf : mass
chapati : ambiguous dish
chapatti : key=roti
ciabatta : mass dish
ciabatta bread : mass
ciabatta loaf : mass
ciabatta roll : kind=roll
cinnamon bread : mass
cinnamon raisin bagel
cinnamon raisin bread : mass
cinnamon swirl : group=pastry
cob roll : kind=roll
corn bread : mass key=cornbread
corn taco shell : kind=shell
corn tortilla : kind=tortilla
cornbread : mass ambiguous dish key=cornbread
cornbread muffin : mass
country bread : mass
country loaf : mass
country-style bread : mass
croissant
crostini : mass dish key=crostini
crumpet
crunchy taco shell : kind=shell
crust : ambiguous group=pastry dish
crusty bread : mass key=crusty-bread
crusty loaf : mass
crusty roll : kind=roll
crusty white bread : mass
currant bun : kind=bun
danish pastry : group=pastry proper=1
dark rye bread : mass
day-old bread : mass key=bread
day-old croissant
demi-baguette
dinner roll : kind=roll key=bread-roll
dry bread : mass key=bread
egg bread : mass
english muffin : kind=muffin proper=1 key=english-muffin
everything bagel
farmhouse loaf : mass
festival dumpling
finger roll : kind=roll
flat bread : key=flatbread
flatbread : key=flatbread
flour tortilla : kind=tortilla
focaccia : mass dish
focaccia bread : mass
frankfurter bun : kind=bun
french baguette : proper=1
french bread : mass proper=1
french bread loaf : mass proper=1
french loaf : mass proper=1
french stick : proper=1
fried bread : mass
frozen garlic bread : mass group=prepared
frozen pancake : group=prepared
frozen paratha
frozen waffle : group=prepared
fruit bread : mass
fruit bun : kind=bun
fruit loaf : mass
garlic baguette : mass group=prepared
garlic bread : mass group=prepared
garlic bread slice : mass group=prepared
garlic naan
garlic texas toast : mass
garlic toast : mass group=prepared
gluten-free bread : mass
golgappa
granary bread : mass
granary loaf : mass
greek flatbread : proper=1
gua bao : kind=bun
gua bao bun : kind=bun
gyro bread
gyros pita
hamburger bun : kind=bun key=burger-bun
hamburger roll : kind=bun
hard roll : kind=roll
hard shell taco : kind=shell
hard taco shell : kind=shell
hawaiian roll : kind=roll proper=1
hawaiian sweet roll : kind=roll proper=1
hero roll : kind=roll
hoagie bun : kind=roll
hoagie roll : kind=roll key=submarine-roll
hot cross bun : kind=bun
hot dog bun = hotdog bun : kind=bun
hot dog roll : kind=bun
iced bun : kind=bun
injera : mass
irish soda bread : mass proper=1
italian bread : mass proper=1
italian bread loaf : mass proper=1
italian bread shell : kind=base proper=1
italian loaf : mass proper=1
japanese milk bread : mass proper=1
johnny cake
johnnycake
kaiser bun : kind=roll
kaiser roll : kind=roll
khobz
kulcha
large flour tortilla : kind=tortilla
lavash : mass
lavash bread : mass
lebanese bread : proper=1
light rye bread : mass
loaf : ambiguous key=bread plural=loaves
long roll : kind=roll
low-carb tortilla : kind=tortilla
malt loaf : mass
malted bread : mass
mantou : kind=bun
marble rye : mass
markook : mass
melba toast : mass
milk bread : mass
mini bagel
mini burger bun : kind=bun
mini corn tortilla : kind=tortilla
mini croissant
mini flatbread
mini flour tortilla : kind=tortilla
mini naan
mini pita : key=pitta
mini pitta : key=pitta
mini pizza base : kind=base
mini taco shell : kind=shell
mozzarella garlic bread : mass group=prepared
multigrain bread = multi-grain bread : mass key=multigrain-bread
naan = nan : dish
naan bread
naan-style flatbread
nan bread
oat bread : mass
old bread : mass key=bread
olive bread : mass
pain au chocolat : group=pastry
pane rustico : mass
panettone : mass
pani puri shell : key=pani-puri-shell
panini roll : kind=roll
papad : key=poppadom
papadum : key=poppadom
paratha = parathas : ambiguous dish
parker house roll : kind=roll
part-baked baguette
peasant bread : mass
phulka
piadina
pide
pita : key=pitta
pita bread : key=pitta
pita pocket : key=pitta
pita round : key=pitta
pitta : key=pitta
pitta bread : key=pitta
pizza base : kind=base key=pizza-base
pizza crust : kind=base key=pizza-base
pizza shell : kind=base
plain bagel
po'boy roll : kind=roll
pocket bread : key=pitta
poori : key=puri
popadom : key=poppadom
poppadom = pappadum : key=poppadom
potato bread : mass
potato bun : kind=bun
potato roll : kind=roll
potato waffle : group=prepared
pre-baked pizza crust : kind=base
prebaked italian bread shell : kind=base
prebaked pizza crust : kind=base
pretzel : group=cracker
pretzel bun : group=cracker
pugliese : mass
pullman loaf : mass
pumpernickel : mass
pumpernickel bread : mass
pupusa
puri : ambiguous key=puri
puri shell : key=pani-puri-shell
raisin bread : mass
raisin loaf : mass
ready-made pizza base : kind=base
refrigerated pizza crust : kind=base
roll : ambiguous dish
roti = rotli : ambiguous dish key=roti
roti canai
roti paratha
rustic bread : mass key=crusty-bread
rustic loaf : mass
rye bread : mass
rye loaf : mass
sandwich bread : mass
sandwich bun : kind=bun
sandwich wrap : kind=wrap
sangak
savoury waffle : group=prepared
seeded bread : mass key=multigrain-bread
seeded burger bun : kind=bun
seeded loaf : mass
seeded rye bread : mass
seeded tortilla : kind=tortilla
sesame bagel
sesame bun : kind=bun
sesame seed bun : kind=bun
shokupan : mass
sliced bread : mass
sliced brioche : mass
sliced white bread : mass key=white-bread
slider bun : kind=bun
slider roll : kind=roll
small corn tortilla : kind=tortilla
small flour tortilla : kind=tortilla
soda bread : mass
soda farl : mass
soft corn tortilla : kind=tortilla
soft flour tortilla : kind=tortilla
soft pretzel : group=cracker
soft roll : kind=roll
soft taco shell : kind=shell
soft taco tortilla : kind=tortilla
soft white roll : kind=roll
sourdough : mass key=sourdough-bread
sourdough bread : mass key=sourdough-bread
sourdough loaf : mass key=sourdough-bread
spelt bread : mass
spinach tortilla : kind=tortilla
split-top bun : kind=bun
stale bread : mass key=bread
steamed bun : kind=bun
stollen : mass
sub bun : kind=roll
sub roll : kind=roll key=submarine-roll
sub sandwich roll : kind=roll
submarine roll : kind=roll key=submarine-roll
submarine sandwich roll : kind=roll
sweet roll : kind=roll
taco shell : kind=shell
taco-size flour tortilla : kind=tortilla
teacake : kind=bun
telera : kind=roll
texas toast : mass proper=1
thin pizza crust : kind=base
thin-crust pizza base : kind=base
toast = toasts : mass ambiguous
toast points : mass
toast round : mass
toaster waffle : group=prepared
toasting muffin : kind=muffin
tomato bread : mass
torta roll : kind=roll
tortilla
tortilla bowl : kind=shell
tortilla wrap : kind=wrap
tostada : kind=shell ambiguous
tostada shell : kind=shell
turkish bread : proper=1
turkish pide : proper=1
tuscan bread : mass proper=1
two-day-old bread : mass key=bread
walnut bread : mass
wheat bread : mass key=whole-wheat-bread
wheaten bread : mass
white bread : mass key=white-bread
white corn tortilla : kind=tortilla
white roll : kind=roll
white sandwich bread : mass
white sliced bread : mass
whole wheat bread : mass key=whole-wheat-bread
whole wheat french bread : mass
whole wheat hamburger bun : kind=bun
whole wheat pita : key=pitta
whole wheat tortilla : kind=tortilla
whole wheat wrap : kind=wrap
whole-grain bread : mass
wholegrain bread : mass
wholemeal bread : mass key=wholemeal-bread
wholemeal pita : key=pitta
wholemeal pitta : key=pitta
wholemeal roll : kind=roll
wholemeal toast : mass
wholemeal tortilla : kind=tortilla
wholemeal wrap : kind=wrap
wholewheat wrap : kind=wrap
wrap : ambiguous kind=wrap
yeast roll : kind=roll
yellow corn tortilla : kind=tortilla
yufka bread : mass

# Crumbs, croutons, stuffing
@ FOOD noun mass group=bread
batter : key=batter-mix dish
batter mix : ambiguous key=batter-mix
beer batter mix
bread cube
bread cubes
breadcrumbs = bread crumbs, breadcrumb, crumb of bread, bread crumb : kind=crumbs
brown breadcrumbs : kind=crumbs
buttered crumbs : kind=crumbs
chicken coating mix : key=chicken-coating-mix
chicken flavor stuffing mix
chicken stuffing mix
chicken-flavored stuffing mix
coating mix : key=chicken-coating-mix
cornbread stuffing mix
cornmeal coating mix
crispy coating mix
crumbs = crumb : ambiguous
cubed bread
cubed stuffing
dried bread cubes
dried breadcrumbs : kind=crumbs key=dried-breadcrumbs
dry bread crumbs : kind=crumbs
dry bread cubes
dry breadcrumbs : kind=crumbs key=dried-breadcrumbs
dry stuffing mix : key=stuffing-mix
fine breadcrumbs : kind=crumbs
fine dried breadcrumbs : kind=crumbs
fine dry breadcrumbs : kind=crumbs
fish breading
fish coating mix
fish fry mix
fresh breadcrumbs : kind=crumbs key=fresh-breadcrumbs
fresh white breadcrumbs : kind=crumbs
fried chicken coating mix
garlic breadcrumbs : kind=crumbs
gluten-free breadcrumbs : kind=crumbs
gluten-free panko : kind=crumbs
golden breadcrumbs : kind=crumbs
herb stuffing mix
herb-seasoned stuffing cubes
herb-seasoned stuffing mix
herbed breadcrumbs : kind=crumbs
italian bread crumbs : kind=crumbs proper=1
italian breadcrumbs : kind=crumbs key=seasoned-breadcrumbs proper=1
italian seasoned bread crumbs : kind=crumbs proper=1
italian seasoned breadcrumbs : kind=crumbs proper=1
italian-style breadcrumbs : kind=crumbs
japanese breadcrumbs : kind=crumbs proper=1
matzah meal
matzo ball mix
matzo cake meal
matzo meal
packaged breadcrumbs : kind=crumbs
packaged stuffing mix
pancake batter
pangrattato : kind=crumbs
panko : kind=crumbs key=panko
panko bread crumbs : kind=crumbs
panko breadcrumbs : kind=crumbs key=panko
panko crumbs : kind=crumbs
rusk crumb : kind=crumbs
sage and onion stuffing
sage and onion stuffing mix
seasoned bread cubes
seasoned breadcrumbs = seasoned bread crumbs : kind=crumbs key=seasoned-breadcrumbs
seasoned coating mix : key=chicken-coating-mix
seasoned flour mix
seasoned panko : kind=crumbs
seasoned stuffing mix
shake-on coating mix
soft bread crumbs : kind=crumbs
soft breadcrumbs : kind=crumbs key=fresh-breadcrumbs
stuffing : ambiguous dish
stuffing croutons
stuffing cubes
stuffing mix : key=stuffing-mix
turkey stuffing mix
white breadcrumbs : kind=crumbs
whole wheat panko : kind=crumbs
wholemeal breadcrumbs : kind=crumbs
@ FOOD noun group=bread
bread stick : group=cracker key=breadstick
breadstick = breadsticks : group=cracker key=breadstick
caesar crouton
crouton : dish
garlic crouton
grissini : group=cracker key=breadstick
grissino : group=cracker
refrigerated breadstick : group=cracker
seasoned crouton
soft breadstick : group=cracker

# Dough, pastry, ready bases
@ FOOD noun mass group=pastry kind=pastry
all-butter puff pastry : key=puff-pastry
all-butter shortcrust pastry : key=shortcrust-pastry
biscuit dough : kind=dough key=biscuit-dough
borek pastry
bread dough : kind=dough
brik pastry = brick pastry : key=brik-pastry
brownie dough : kind=dough
buttermilk biscuit dough : kind=dough
canned biscuit dough : kind=dough
canned biscuits : kind=dough
chapati dough : kind=dough
chocolate chip cookie dough : kind=dough
choux : key=choux-pastry
choux dough
choux pastry : key=choux-pastry
cinnamon roll dough : kind=dough
cookie dough : kind=dough key=cookie-dough
crescent dough : kind=dough key=crescent-roll-dough
crescent dough sheet : kind=dough
crescent roll dough : kind=dough key=crescent-roll-dough
crescent roll dough sheet : kind=dough key=crescent-roll-dough
crescent sheet : kind=dough
croissant dough : kind=dough
danish dough : kind=dough proper=1
danish pastry dough : kind=dough proper=1
dessert pastry
double-crust pie dough : kind=dough
dough : ambiguous kind=dough dish
dumpling dough : kind=dough
edible cookie dough : kind=dough
empanada dough : kind=dough
feuille de brick
filo : key=filo-pastry
filo pastry : key=filo-pastry
filo pastry sheet : key=filo-pastry
filo pastry sheets : key=filo-pastry
filo sheet : key=filo-pastry
filo sheets : key=filo-pastry
flaky biscuits : kind=dough
flaky pastry
flaky pastry dough
flatbread dough : kind=dough
fresh pizza dough : kind=dough
frozen bread dough : kind=dough
frozen bread dough loaf : kind=dough
frozen bread rolls : kind=dough
frozen dinner roll dough : kind=dough
frozen phyllo dough : key=filo-pastry
frozen pizza dough : kind=dough
frozen puff pastry
frozen puff pastry sheet
frozen puff pastry sheets
frozen roll dough : kind=dough
gingerbread dough : kind=dough
hot water crust : kind=pastry
hot-water crust pastry : kind=pastry
laminated dough : kind=dough
naan dough : kind=dough
pastry = pastries : dish
pasty dough : kind=dough
phyllo : key=filo-pastry
phyllo dough : key=filo-pastry
phyllo dough sheets : key=filo-pastry
phyllo pastry : key=filo-pastry
phyllo sheet : key=filo-pastry
phyllo sheets : key=filo-pastry
pie crust dough : kind=dough key=pie-dough
pie crust pastry : kind=dough
pie dough : kind=dough key=pie-dough
pie pastry : kind=dough
pierogi dough : kind=dough
pizza crust mix : kind=mix
pizza dough : kind=dough key=pizza-dough
pizza dough ball : kind=dough
pizza dough balls : kind=dough
puff pastry : key=puff-pastry
puff pastry dough
puff pastry sheet = puff pastry sheets : key=puff-pastry-sheet
pâte brisée
pâte sablée
pâte sucrée
pâte à choux
ready-made shortcrust pastry
ready-rolled puff pastry : key=puff-pastry-sheet
ready-rolled puff pastry sheet
ready-rolled shortcrust pastry
refrigerated biscuit dough : kind=dough key=biscuit-dough
refrigerated biscuits : kind=dough
refrigerated bread dough : kind=dough
refrigerated buttermilk biscuit dough : kind=dough
refrigerated buttermilk biscuits : kind=dough
refrigerated chocolate chip cookie dough : kind=dough
refrigerated cinnamon roll dough : kind=dough
refrigerated cinnamon rolls : kind=dough
refrigerated cookie dough : kind=dough key=cookie-dough
refrigerated crescent dinner roll dough : kind=dough
refrigerated crescent dough : kind=dough
refrigerated crescent roll dough : kind=dough
refrigerated flaky biscuits : kind=dough
refrigerated french bread dough : kind=dough
refrigerated pie dough : kind=dough
refrigerated pizza dough : kind=dough key=pizza-dough
refrigerated sugar cookie dough : kind=dough
roll dough : kind=dough
roti dough : kind=dough
rough puff pastry
savory pie dough : kind=dough
savoury shortcrust pastry
shortbread dough : kind=dough
shortcrust : key=shortcrust-pastry
shortcrust pastry = short crust pastry : key=shortcrust-pastry
slice-and-bake cookie dough : kind=dough
store-bought pizza dough : kind=dough
suet crust : kind=pastry
suet pastry : kind=pastry
sugar cookie dough : kind=dough
sweet pastry : key=sweet-shortcrust-pastry
sweet shortcrust : key=sweet-shortcrust-pastry
sweet shortcrust pastry : key=sweet-shortcrust-pastry
sweet tart dough
tart dough
tube biscuits : kind=dough
vegan puff pastry
warka
warqa pastry
white bread dough : kind=dough
yufka : key=brik-pastry
@ FOOD noun group=pastry
american biscuit : group=bread proper=1
baked pie crust : kind=crust
baked pie shell : kind=crust
baking-powder biscuit : group=bread
biscuit = biccy, bickie : ambiguous group=bread dish
blind-baked pastry case : kind=crust
buttermilk biscuit : group=bread
cake donut : key=doughnut
chocolate cookie crust : kind=crust
chocolate cookie pie crust : kind=crust
chocolate crumb crust : kind=crust
chocolate graham cracker crust : kind=crust
cinnamon bun
cinnamon doughnut : key=doughnut
cinnamon roll
cream puff
crescent dinner roll : kind=roll
crescent roll : kind=roll
croustade : kind=shell
crumb crust : kind=crust
deep dish pie shell : kind=crust
deep-dish pie crust : kind=crust
donut : key=doughnut dish
donut hole : key=doughnut
double pie crust : kind=crust
doughnut : key=doughnut dish
doughnut hole : key=doughnut
empanada disc : kind=wrapper
empanada dough disc : kind=wrapper
empanada wrapper : kind=wrapper
filo cup : kind=case
frozen biscuit : group=bread
frozen cinnamon roll
frozen deep-dish pie crust : kind=crust
frozen phyllo cup : kind=case
frozen pie crust : kind=crust
frozen pie shell : kind=crust
frozen puff pastry shell : kind=case
gingersnap crust : kind=crust
glazed donut : key=doughnut
glazed doughnut : key=doughnut
graham cracker crust : kind=crust key=graham-cracker-crust
graham cracker pie crust : kind=crust key=graham-cracker-crust
graham cracker pie shell : kind=crust
gyoza disc : kind=wrapper
jam doughnut : key=doughnut
mini doughnut : key=doughnut
mini phyllo cup : kind=case
mini phyllo shell : kind=case
mini phyllo tart shell : kind=case
mini pie crust : kind=shell
mini tart shell : kind=shell
pastry case : kind=crust
pastry shell : kind=crust
pie crust : kind=crust key=pie-crust
pie shell : kind=crust key=pie-crust
prebaked pie crust : kind=crust
prepared graham cracker crust : kind=crust
prepared pie crust : kind=crust
puff pastry case : kind=case
puff pastry shell : kind=case
ready-made graham cracker crust : kind=crust
ready-made pie crust : kind=crust
refrigerated crescent dinner roll : kind=roll
refrigerated crescent roll : kind=roll
refrigerated pie crust : kind=crust
shortbread crust : kind=crust
shortbread pie crust : kind=crust
sticky bun
sweet tart shell : kind=shell
tart case : kind=shell
tart shell : kind=shell
tartlet case : kind=shell
tartlet crust : kind=shell
tartlet shell : kind=shell
unbaked pie crust : kind=crust
unbaked pie shell : kind=crust
vol-au-vent : kind=case key=vol-au-vent-case
vol-au-vent case : kind=case key=vol-au-vent-case
éclair shell

# Cakes
@ FOOD noun group=pastry kind=cake
amaretti macaroon
angel cake : key=angel-food-cake
angel food cake : key=angel-food-cake
arctic roll
boudoir biscuit : key=sponge-finger kind=biscuit
brownie crumb
butter cake
cake crumb = cake crumbs
cake pop
cake roll
chiffon cake
chocolate log
chocolate sponge
chocolate swiss roll
coconut macaroon
corn muffin : ambiguous kind=muffin
cream-filled snack cake
cream-filled sponge cake
dessert shell
devil's food cake
frozen all-butter pound cake
frozen brownie
frozen cheesecake
frozen pound cake
fruitcake
gingerbread : mass dish
golden cream-filled sponge
jam roly-poly : key=swiss-roll
jam swiss roll
jelly roll : key=swiss-roll
lady finger : key=sponge-finger kind=biscuit
ladyfinger : key=sponge-finger kind=biscuit
lemon pound cake
loaf cake
macaroon : dish
madeira cake
madeira loaf cake
panforte
plain sponge : key=sponge-cake
pound cake
prepared angel food cake
savoiardi : key=sponge-finger kind=biscuit
savoiardi biscuit : key=sponge-finger kind=biscuit
shortcake
shortcake shell
snack cake
snack cakes
sponge cake : key=sponge-cake
sponge dessert cup
sponge finger : key=sponge-finger kind=biscuit
swiss roll : proper=1 key=swiss-roll
trifle sponge : key=sponge-finger kind=biscuit
victoria sponge

# Sweet biscuits and cookies
@ FOOD noun group=cracker kind=biscuit
almond biscotti : mass
amaretti : key=amaretti-biscuit
amaretti biscuit : key=amaretti-biscuit
amaretti cookie
amarettis : key=amaretti-biscuit
animal cracker : kind=cookie
arrowroot biscuit
bear-shaped graham cracker : kind=cookie
biscotti = biscottis : mass
biscuit crumbs = biscuit crumb : mass kind=crumbs key=biscuit-crumbs
bourbon biscuit
brandy snap
cake cone : kind=cone
cantucci : mass
cantuccini : mass
caramel biscuit
caramelised biscuit
caramelized biscuit cookie
cereal bar
chocolate biscuit
chocolate cookie : kind=cookie key=chocolate-sandwich-cookie
chocolate cookie crumbs : mass kind=crumbs
chocolate digestive
chocolate digestive biscuit
chocolate graham cracker : kind=cracker
chocolate graham cracker crumbs : mass kind=crumbs
chocolate sandwich biscuit : kind=cookie
chocolate sandwich cookie : kind=cookie key=chocolate-sandwich-cookie
chocolate sandwich cookie crumbs : mass kind=crumbs
chocolate wafer : kind=cookie
chocolate wafer cookie : kind=cookie
chocolate wafer crumbs : mass kind=crumbs
chocolate-coated biscuit
chocolate-covered biscuit
chocolate-filled rolled wafer
cinnamon graham cracker : kind=cracker
cinnamon graham cracker crumbs : mass kind=crumbs
cone : kind=cone key=ice-cream-cone ambiguous
cookie : key=cookie kind=cookie ambiguous dish
cookie crumb : mass kind=crumbs
cookie crumbs : mass kind=crumbs key=biscuit-crumbs
cookies-and-cream cookie : kind=cookie
cream wafer
cream-filled biscuit
cream-filled chocolate cookie : kind=cookie
cream-filled chocolate sandwich cookie : kind=cookie
creme-filled chocolate sandwich cookie : kind=cookie
custard cream
digestive biscuit
digestive biscuit crumbs : mass kind=crumbs
double-stuffed chocolate sandwich cookie : kind=cookie
dutch crispbake : proper=1
fortune cookie : kind=cookie
ginger biscuit
ginger cookie
ginger nut
ginger nut biscuit
ginger snap : key=ginger-snap
ginger thin
gingerbread man
gingerbread men
gingersnap : key=ginger-snap
gingersnap biscuit
gingersnap cookie : key=ginger-snap
gingersnap crumbs : mass kind=crumbs
golden sandwich cookie : kind=cookie
graham biscuit : kind=cracker
graham cracker : kind=cracker
graham cracker crumbs = graham cracker crumb : mass kind=crumbs key=graham-cracker-crumbs
graham cracker sheet : kind=cracker
graham cracker square : kind=cracker
graham crumbs : mass kind=crumbs key=graham-cracker-crumbs
graham wafer crumbs : mass kind=crumbs
granola bar
honey graham : kind=cracker
honey graham cracker : kind=cracker
ice cream cone : ambiguous kind=cone key=ice-cream-cone
ice cream cornet : kind=cone
ice cream wafer
jam sandwich biscuit
lemon sandwich cookie : kind=cookie
malt biscuit
maria cookie
marie biscuit
milk arrowroot biscuit
milk biscuit
mini chocolate sandwich cookie : kind=cookie
mini vanilla wafer : kind=wafer
mint sandwich cookie : kind=cookie
muesli bar
oat bar
oat biscuit = oaty biscuit
peanut butter sandwich cookie : kind=cookie
plain biscuit
plain digestive
plain sweet biscuit
rich tea biscuit : key=rich-tea-biscuit
rolled wafer
rusk
sandwich biscuit
shortbread : mass ambiguous dish
shortbread biscuit : mass
shortbread cookie : mass
shortbread cookie crumbs : mass kind=crumbs
shortbread finger : mass
shortbread round : mass
soft amaretti
speculaas
speculoos : key=speculoos-biscuit
speculoos biscuit : key=speculoos-biscuit
spiced biscuit
sugar cone : kind=cone
sugar wafer : kind=wafer
sweet biscuit
tea biscuit : key=rich-tea-biscuit
tea biscuits : key=rich-tea-biscuit
teddy bear cookie : kind=cookie
teddy-shaped graham cracker : kind=cookie
teething rusk
vanilla cookie : kind=wafer
vanilla cookie crumbs : mass kind=crumbs
vanilla sandwich cookie : kind=wafer
vanilla wafer : kind=wafer key=vanilla-wafer
vanilla wafer cookie : kind=wafer key=vanilla-wafer
vanilla wafer crumbs : mass kind=crumbs
wafer
wafer biscuit
wafer cookie
wafer stick
waffle bowl : kind=cone
waffle cone : kind=cone
wheatmeal biscuit
whole graham cracker : kind=cracker
wholemeal biscuit
zwieback

# Crackers, crisps, chips
@ FOOD noun group=cracker
aloo bhujia : mass
apple chip : kind=chip
arare : kind=cracker
bagel chip : kind=chip
barbecue potato chip : key=potato-crisp kind=chip
bhujia : mass
blue corn tortilla chip : kind=chip
bombay mix : mass
boondi : mass
butter cracker : kind=cracker key=buttery-cracker
butter cracker crumbs : mass kind=crumbs
butter-flavored cracker : kind=cracker
buttery cracker : kind=cracker key=buttery-cracker
buttery cracker crumbs : mass kind=crumbs
buttery round cracker : kind=cracker
cancha
cassava chip : kind=chip
cheddar cracker : kind=cracker
cheese and onion crisp : key=potato-crisp kind=crisp
cheese ball snack
cheese biscuit : kind=cracker
cheese cracker : kind=cracker
cheese curl
cheese puff
cheese straw : kind=cracker
cheese thin : kind=cracker
cheese-flavored cracker : kind=cracker
cheese-flavoured corn chip : kind=chip
chevda : mass
corn cake
corn chip : kind=chip key=tortilla-chip
corn nuts = corn nut
corn puff
corn tortilla chip : kind=chip
cracker : ambiguous
cracker crumbs = cracker crumb : mass kind=crumbs
cracker meal : mass kind=crumbs
cream cracker : kind=cracker
crinkle-cut potato chip : key=potato-crisp kind=chip
crisp : ambiguous
crispbread
farsan : mass
fish-shaped cracker : kind=cracker
gathiya : mass
japanese rice cracker : kind=cracker proper=1
kale chip : kind=chip
kale crisp : kind=chip
kettle chip : key=potato-crisp kind=chip
kettle-cooked potato chip : key=potato-crisp kind=chip
krupuk : kind=cracker
matzah : key=matzo
matzo = matzoh, matza : key=matzo
matzo cracker
mini pretzel : kind=pretzel
miniature pretzel : kind=pretzel
multigrain cracker : kind=cracker
nacho : kind=chip ambiguous
nacho cheese tortilla chip : kind=chip
nacho chip : kind=chip
nacho-flavoured tortilla chip : kind=chip
nut mix : mass
nylon sev : mass
oatcake = oat cake
oyster cracker : kind=cracker
party mix : mass
pita chip : kind=chip
plain cracker : kind=cracker
plain tortilla chip : kind=chip
plantain chip : kind=chip
potato chip : key=potato-crisp kind=chip
potato crisp : key=potato-crisp kind=crisp
potato stick : key=potato-crisp kind=chip
prawn cracker : kind=cracker
pretzel crumbs : mass kind=pretzel
pretzel nugget : kind=pretzel
pretzel rod : kind=pretzel
pretzel snap : kind=pretzel
pretzel stick : kind=pretzel
pretzel twist : kind=pretzel
puffed corn snack
ready salted crisp : key=potato-crisp kind=crisp
ready salted crisps : key=potato-crisp kind=crisp
restaurant-style tortilla chip : kind=chip
rice cake biscuit
rice cake cracker
rice cracker : kind=cracker
rich butter cracker : kind=cracker
rich round cracker : kind=cracker
ripple chip : key=potato-crisp kind=chip
round butter cracker : kind=cracker
round buttery cracker : kind=cracker
rye cracker : kind=cracker
rye crispbread
salt and vinegar crisp : key=potato-crisp kind=crisp
salted cracker : kind=cracker
saltine : kind=cracker key=saltine-cracker
saltine cracker : kind=cracker key=saltine-cracker
saltine cracker crumbs : mass kind=crumbs
saltine crumbs : mass kind=crumbs
saltines : kind=cracker key=saltine-cracker
savory cracker : kind=cracker
savoury biscuit : kind=cracker
scottish oatcake : proper=1
seaweed cracker
seaweed crisp
seaweed snack
seeded cracker : kind=cracker
sev : mass
shoestring potato stick : key=potato-crisp kind=chip
shrimp chip : kind=cracker
shrimp cracker : kind=cracker
small pretzel : kind=pretzel
snack mix : mass key=snack-mix
soda cracker : kind=cracker
soup cracker : kind=cracker
sour cream and onion potato chip : key=potato-crisp kind=chip
square pretzel : kind=pretzel
table water cracker : kind=cracker
thin wheat cracker : kind=cracker
tiny pretzel twist : kind=pretzel
toasted corn kernel
tortilla chip : kind=chip key=tortilla-chip
tortilla strip : kind=chip
totopo : kind=chip
trail mix : mass key=snack-mix
unsalted saltine : kind=cracker
vegetable chip : kind=chip
vegetable cracker : kind=cracker
vegetable crisp : key=potato-crisp kind=crisp
waffle pretzel : kind=pretzel
water biscuit : kind=cracker
wheat cracker : kind=cracker
whole wheat cracker : kind=cracker
wholewheat cracker : kind=cracker
woven wheat cracker : kind=cracker
