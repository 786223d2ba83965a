# Sauces, dressings, mustard, mayonnaise, pickles, relishes and pastes.

# Savoury sauces, thin
@ FOOD noun mass group=sauce liquid kind=sauce
aminos : key=coconut-aminos
au jus : key=au-jus-mix
au jus gravy
au jus gravy mix
au jus mix : key=au-jus-mix
beef gravy
black pepper sauce
brown gravy
brown sauce
brown steak sauce
buffalo hot sauce
buffalo sauce
buffalo wing sauce
bulgogi marinade
bulgogi sauce
caribbean hot sauce : proper=1
cayenne pepper sauce
chicken gravy
chinese stir-fry sauce : proper=1
chipotle marinade
chow mein sauce
coconut aminos : key=coconut-aminos
colatura
country gravy
dark soy : key=dark-soy-sauce
dark soy sauce : key=dark-soy-sauce
demi-glace
demi-glaze
eel sauce
fish sauce : key=fish-sauce
general's chicken sauce
gluten-free soy sauce
gravy : dish
green hot sauce
green pepper sauce
guk ganjang
habanero hot sauce
habanero sauce
hot pepper sauce : key=hot-sauce
hot pepper vinegar sauce
hot sauce : key=hot-sauce
italian marinade : proper=1
jalapeño hot sauce
jerk marinade
jus : ambiguous dish
kabayaki sauce
kalbi marinade
katsu curry sauce
katsu sauce
kecap manis : key=sweet-soy-sauce
ketjap manis : key=sweet-soy-sauce
korean barbecue sauce : proper=1
korean soup soy sauce : proper=1 key=korean-soup-soy-sauce
kung pao sauce
leftover gravy
lemon pepper marinade
less-sodium soy sauce
light soy : key=light-soy-sauce
light soy sauce : key=light-soy-sauce
liquid aminos
liquid seasoning : key=liquid-seasoning
louisiana hot sauce
low-salt soy sauce
low-sodium soy sauce
marinade : ambiguous dish
mexican hot sauce : proper=1
mojo : ambiguous
mojo criollo
mojo marinade
mongolian sauce
mushroom dark soy : key=mushroom-soy-sauce
mushroom gravy
mushroom soy sauce : key=mushroom-soy-sauce
nam pla : key=fish-sauce
noodle soup base
nuoc mam : key=fish-sauce
okonomiyaki sauce
onion gravy
orange chicken sauce
pepper sauce
peri peri
peri-peri marinade
peri-peri sauce : key=piri-piri-sauce
piri piri : key=piri-piri-sauce
piri-piri sauce : key=piri-piri-sauce
ready-made gravy
red pepper sauce
red wine jus
reduced-salt soy sauce
reduced-sodium soy sauce
sausage gravy
scotch bonnet pepper sauce : proper=1
scotch bonnet sauce : proper=1
seasoning sauce : key=liquid-seasoning
shoyu : key=soy-sauce
soup soy sauce : key=korean-soup-soy-sauce
sour orange marinade
soy : ambiguous key=soy-sauce
soy sauce : key=soy-sauce
soya sauce : key=soy-sauce
steak marinade
steak sauce
stir-fry sauce
sweet soy sauce : key=sweet-soy-sauce
szechuan sauce : proper=1
takoyaki sauce
tamari
tamari sauce
tamari soy sauce
tentsuyu = mentsuyu
teriyaki : key=teriyaki-sauce
teriyaki glaze
teriyaki marinade
teriyaki sauce : key=teriyaki-sauce
tonkatsu sauce
tsuyu
turkey gravy
unagi sauce
veal jus
vegan fish sauce
vegan worcestershire sauce
vegetable gravy
vinegar-based hot sauce
white gravy
wing sauce
worcester sauce
worcestershire : key=worcestershire-sauce proper=1
worcestershire sauce : proper=1 key=worcestershire-sauce
yakisoba sauce
yakitori sauce

# Savoury sauces, thick
@ FOOD noun mass group=sauce kind=sauce
alfredo sauce : proper=1
alfredo sauce mix : proper=1
apple sauce condiment
arrabbiata sauce
balti sauce
barbecue : key=barbecue-sauce ambiguous
barbecue sauce : key=barbecue-sauce
basil pesto : key=pesto
bbq sauce
bechamel sauce mix
beurre blanc
black bean and garlic sauce
black bean garlic sauce
black bean salsa
black bean sauce
blonde roux
bolognese : key=bolognese-sauce ambiguous
bolognese mix
bolognese sauce = bolognaise sauce : key=bolognese-sauce
bread sauce
brown roux
burger sauce : key=burger-sauce
butter chicken sauce
béarnaise
béarnaise sauce
béchamel : key=white-sauce
béchamel sauce
cacik
canned cranberry sauce
carbonara sauce
catsup : key=ketchup
cheddar cheese sauce
cheese dip
cheese sauce : key=cheese-sauce
cheese sauce mix
cheese sauce packet
cheese sauce powder
chermoula = charmoula
chile con queso
chili garlic sauce : key=chilli-garlic-sauce
chili sauce = chile sauce : key=chilli-sauce
chili-garlic paste
chilli garlic sauce = chile-garlic sauce, garlic chilli sauce : key=chilli-garlic-sauce
chilli sauce : key=chilli-sauce
chimichurri
chimichurri sauce
chinese curry sauce : proper=1
chip shop curry sauce
chipotle salsa
chunky pasta sauce
chunky salsa
cocktail sauce
concentrated tomato purée : kind=tomato
condensed cheese soup sauce : key=cheese-sauce
corn salsa
cranberry jelly
cranberry relish
cranberry sauce
cream of horseradish
cream sauce
creamed horseradish
creamy horseradish sauce
cucumber raita
curry block
curry cube
curry roux : key=japanese-curry-roux
curry roux block
curry sauce
curry simmer sauce
diane sauce
dip : ambiguous kind=dip dish
double concentrate tomato purée : kind=tomato
duck sauce
enchilada sauce
enchilada sauce mix
four cheese sauce
four-cheese alfredo sauce
french onion dip : kind=dip proper=1
fresh pesto
fresh salsa
fresh tomato salsa
fry sauce
gado gado sauce
garlic mayonnaise sauce
garlic sauce
golden curry cube
green enchilada sauce
green harissa
green pesto
green salsa
green taco sauce
hickory barbecue sauce
hickory bbq sauce
hoisin : key=hoisin-sauce
hoisin sauce : key=hoisin-sauce
hollandaise : key=hollandaise-sauce
hollandaise mix
hollandaise sauce : key=hollandaise-sauce
honey barbecue sauce
honey mustard sauce
horseradish sauce
hot salsa
jalfrezi sauce
japanese curry block : proper=1
japanese curry roux : proper=1 key=japanese-curry-roux
jarred cheese sauce
jarred pasta sauce
jarred queso
jarred salsa
jarred tomato sauce
jellied cranberry sauce
ketchup : key=ketchup
korma sauce
lemon butter sauce
mango salsa
marie rose sauce
marinara : key=marinara-sauce
marinara sauce : key=marinara-sauce
meat ragu
meat sauce
medium salsa
mild salsa
mild taco sauce
mole : ambiguous dish
mole paste
mole sauce
mushroom oyster sauce : key=vegetarian-oyster-sauce
mushroom sauce
mushroom stir-fry sauce
mustard sauce
nacho cheese
nacho cheese dip
nacho cheese sauce
oyster sauce
oyster-flavoured sauce
packet sauce mix
parsley sauce
passata : key=passata
pasta bake sauce
pasta sauce
pasta sauce mix
peach salsa
peanut sauce : key=peanut-sauce
peppercorn sauce
pesto : dish key=pesto
pesto alla genovese
pesto rosso
pesto sauce
picante sauce
pico : key=pico-de-gallo
pico de gallo : key=pico-de-gallo
pineapple salsa
pizza sauce
pizza topping sauce
plum sauce
puttanesca sauce
queso : key=queso-dip
queso dip : key=queso-dip
ragù : ambiguous
raita : dish
ranch dip : kind=dip
ranch dip mix : kind=dip
red chile sauce : key=chilli-sauce
red chili sauce : key=chilli-sauce
red enchilada sauce
red pesto : key=red-pesto
red salsa
red sauce
red taco sauce
red wine sauce
restaurant-style salsa
roasted garlic pasta sauce
romesco : key=romesco-sauce
romesco sauce : key=romesco-sauce
roux : ambiguous dish
salsa : dish key=salsa
salsa con queso
salsa dip
salsa roja
salsa verde
salsa verde sauce
sambal : key=sambal-oelek
sambal belacan
sambal oelek : key=sambal-oelek
sambal ulek
satay sauce : key=peanut-sauce
sauce : ambiguous dish
sauce mix
schug
seafood cocktail sauce
seafood sauce
secret sauce
sieved tomatoes : key=passata
simmer sauce
sloppy joe mix
sloppy joe sauce
sloppy joe seasoning mix
smoky barbecue sauce
sour cream and onion dip : kind=dip
spaghetti sauce : key=pasta-sauce
spaghetti sauce mix
spaghetti seasoning mix
special sauce : key=burger-sauce
sriracha : key=sriracha
sriracha chili sauce
sriracha hot sauce
sriracha sauce : key=sriracha
strained tomatoes : key=passata
stroganoff mix
sugo
sun-dried tomato pesto : key=red-pesto
sun-dried tomato sauce
sunday sauce
sweet and sour sauce
sweet barbecue sauce
sweet chili sauce : key=sweet-chilli-sauce
sweet chilli sauce : key=sweet-chilli-sauce
taco sauce
tahini sauce
tartar sauce : key=tartare-sauce
tartare sauce : key=tartare-sauce
thai curry sauce : proper=1
thai peanut sauce : proper=1
thai sweet chili sauce : key=sweet-chilli-sauce proper=1
thick and chunky salsa
thousand island sauce
three cheese sauce
tikka masala sauce
tikka masala simmer sauce
tomatillo salsa
tomato and basil sauce
tomato basil pasta sauce
tomato basil sauce
tomato ketchup : key=ketchup
tomato passata : key=passata
tomato pasta sauce
tomato pesto
tomato purée : kind=tomato
tomato salsa : key=salsa
tomato sauce
toum
tzatziki = tsatsiki : dish
tzatziki sauce
vegan oyster sauce
vegetarian oyster sauce : key=vegetarian-oyster-sauce
vegetarian stir-fry sauce
velouté
velouté sauce
vodka sauce
white garlic sauce
white sauce : key=white-sauce
white sauce granules
white sauce mix
whole berry cranberry sauce
whole cranberry sauce
xo sauce : proper=1
yellow bean sauce
zhoug = zhug

# Condiments
@ FOOD noun mass group=condiment kind=mustard
american mustard : key=yellow-mustard proper=1
ballpark mustard : key=yellow-mustard
bavarian mustard
beer mustard
brown mustard
chinese hot mustard : proper=1
chinese mustard : proper=1
coarse mustard : key=wholegrain-mustard
coarse-grain mustard : key=wholegrain-mustard
country mustard : key=wholegrain-mustard
creole mustard : proper=1
deli mustard
dijon : key=dijon-mustard proper=1
dijon mustard : proper=1 key=dijon-mustard
dijon-style mustard
english mustard : proper=1
german mustard : proper=1
grain mustard : key=wholegrain-mustard
grainy mustard : key=wholegrain-mustard
honey mustard
horseradish mustard
hot english mustard
hot mustard
karashi
kasundi
mustard = mustards
old-style mustard : key=wholegrain-mustard
prepared mustard : key=yellow-mustard
prepared yellow mustard
seeded mustard : key=wholegrain-mustard
spicy brown mustard
stone-ground mustard : key=wholegrain-mustard
stoneground mustard : key=wholegrain-mustard
sweet mustard
tarragon mustard
whole-grain mustard : key=wholegrain-mustard
wholegrain mustard : key=wholegrain-mustard
yellow mustard : key=yellow-mustard
@ FOOD noun mass group=condiment kind=mayonnaise
aioli = alioli : kind=aioli dish
avocado oil mayonnaise
chipotle mayo : key=chipotle-mayonnaise
chipotle mayonnaise : key=chipotle-mayonnaise
creamy salad dressing : kind=spread
egg-free mayonnaise
garlic aioli : kind=aioli
garlic mayo : key=aioli kind=aioli
garlic mayonnaise : key=aioli kind=aioli
herb mayonnaise
japanese mayo : proper=1
japanese mayonnaise : proper=1
lemon mayonnaise
light mayo
light mayonnaise
lighter mayonnaise
low-fat mayonnaise
mayonnaise = mayo
mayos
olive oil mayonnaise
reduced-fat mayonnaise
remoulade sauce
rouille
rémoulade
salad cream : kind=spread
sandwich mayonnaise : kind=spread
sandwich spread : kind=spread
spicy mayo
sriracha mayo
vegan mayo
vegan mayonnaise
wasabi mayo
wasabi mayonnaise
whipped salad dressing : kind=spread
@ FOOD noun mass group=condiment kind=dressing
asian dressing : proper=1
asian salad dressing : proper=1
avocado ranch dressing
balsamic dressing
balsamic vinaigrette
bleu cheese dressing
blue cheese dressing
bottled ranch
buttermilk dressing
buttermilk ranch dressing
caesar dressing : proper=1
caesar salad dressing
catalina dressing
catalina salad dressing
chipotle dressing
coleslaw dressing
creamy italian dressing
dijon vinaigrette : proper=1
dressing : ambiguous dish
fat-free italian dressing
feta dressing
french dressing : key=vinaigrette proper=1
french vinaigrette : proper=1
ginger dressing
greek dressing : proper=1
greek salad dressing : proper=1
green goddess dressing
honey mustard dressing
italian dressing : proper=1 key=italian-dressing
italian salad dressing : key=italian-dressing proper=1
italian-style salad dressing
lemon dressing
lemon vinaigrette
light ranch dressing
miso dressing
poppy seed dressing
poppyseed dressing
ranch dressing
ranch salad dressing
raspberry vinaigrette
red wine vinaigrette
roasted sesame dressing
russian dressing : key=thousand-island-dressing proper=1
salad dressing
sesame dressing
sesame ginger dressing
sesame soy dressing
slaw dressing
tahini dressing
thousand island dressing : key=thousand-island-dressing
vinaigrette : dish key=vinaigrette
yogurt dressing
zesty italian dressing
@ FOOD noun group=condiment
antipasti vegetable : group=vegetable
antipasto : group=vegetable
antipasto pepper : group=vegetable
baby caper : kind=caper
bread-and-butter pickle : kind=pickle
brined caper : kind=caper
caper
caperberry = caper berry
capers in brine : kind=caper
capers in salt : kind=caper
cocktail gherkin : kind=gherkin
cornichon : kind=gherkin
danmuji
dill pickle : kind=pickle
dill pickle chip : kind=pickle
dill pickle slice : kind=pickle
dill pickle spear : kind=pickle
gherkin : kind=gherkin
grilled artichokes in oil : group=vegetable
grilled pepper in oil : group=vegetable
grilled vegetables in oil : group=vegetable
guindilla pepper
hamburger dill : kind=pickle
kosher dill pickle : kind=pickle
kosher pickle : kind=pickle
nonpareil caper : kind=caper
oil-packed sun-dried tomato : group=vegetable kind=tomato key=sun-dried-tomato
pickle : ambiguous kind=pickle
pickle chip : kind=pickle
pickle slice : kind=pickle
pickle spear : kind=pickle
pickled banana pepper
pickled bird's eye chilli : plural=chillies
pickled cabbage
pickled carrot
pickled carrot and daikon
pickled chile
pickled chili
pickled chilli : plural=chillies
pickled cucumber : kind=gherkin
pickled daikon
pickled garlic
pickled gherkin : kind=gherkin
pickled green bean
pickled green chilli : plural=chillies
pickled hot pepper
pickled lemon
pickled mushroom
pickled mustard green : mass
pickled okra
pickled onion
pickled pearl onion
pickled pepper
pickled plum
pickled radish
pickled red onion
pickled shallot
pickled turnip
pickled vegetable
roasted pepper in oil : group=vegetable
roasted red peppers in oil : group=vegetable
salted caper : kind=caper
sandwich pickle : kind=pickle
silverskin pickled onion
sun-dried tomato in oil = sun-dried tomatoes in oil : group=vegetable kind=tomato key=sun-dried-tomato
sun-dried tomatoes packed in oil : group=vegetable kind=tomato key=sun-dried-tomato
sundried tomatoes in oil : group=vegetable kind=tomato key=sun-dried-tomato
sweet and sour pickle : kind=pickle
sweet gherkin : kind=pickle
sweet pickle : kind=pickle
takuan
yellow pickled radish
@ FOOD noun mass group=condiment
achaar : kind=pickle key=lime-pickle
achar : kind=pickle
aji verde
ajvar
antipasto spread
apple chutney : kind=chutney
apricot chutney : kind=chutney
artichoke paste
atchara
aubergine dip
aubergine pickle : kind=pickle
baba ganoush = baba ghanoush
banana ketchup
banana sauce
beet horseradish
beet relish : kind=relish
beni shoga : kind=ginger
black olive tapenade
brinjal pickle : kind=pickle
bruschetta topping
cabbage kimchi
caponata
carrots escabeche
chai poh
chili crisp : key=chilli-crisp
chili crunch
chilli crisp = chile crisp : key=chilli-crisp
chilli crunch
chilli pickle : kind=pickle
chow chow relish : kind=relish
chow-chow : kind=relish
chowchow : kind=relish
chutney : kind=chutney ambiguous dish
cilantro chutney : kind=chutney
coconut chutney : kind=chutney
coriander chutney : kind=chutney
coriander-mint chutney : kind=chutney
corn relish : kind=relish
cranberry chutney : kind=chutney
cranberry orange relish
crispy chili oil
crispy chilli oil : key=chilli-crisp
crispy fried garlic
crispy garlic
cucumber relish : kind=relish
curtido
date and tamarind chutney : kind=chutney
date chutney : kind=chutney
dill pickle relish : kind=relish key=pickle-relish
dill relish : kind=relish
escabeche
fig chutney : kind=chutney
fresh horseradish
fried garlic
fried garlic chips
fruit chutney : kind=chutney
garlic chips
garlic pickle : kind=pickle
gherkin relish : kind=relish
grated horseradish
green chutney : kind=chutney
green coriander chutney : kind=chutney
green olive tapenade
green relish : kind=relish
guacamole = guac : dish
horseradish : key=horseradish
hot dog relish : kind=relish
hot horseradish
hummus = houmous, hummous, humus : dish
imli chutney : kind=chutney
indian pickle : kind=pickle proper=1
jarred horseradish
jarred jalapeno slices
jarred jalapeños
kimchi = kimchee, kimchis
kkakdugi
kraut : key=sauerkraut
lemon pickle : kind=pickle
lime pickle : kind=pickle key=lime-pickle
ljutenica
lutenitsa
major grey's chutney : kind=chutney
mango chutney : kind=chutney
mango pickle : kind=pickle
mint chutney : kind=chutney
mixed pickle : kind=pickle
mostarda
moutabal
muffuletta mix
muhammara
mushroom ketchup
nacho slices
napa cabbage kimchi
olive paste
olive salad
olive tapenade
peach chutney : kind=chutney
pear chutney : kind=chutney
pepper relish : kind=relish
pepper spread
piccalilli
pickle relish : kind=relish key=pickle-relish
pickled ginger : kind=ginger
pickled jalapeno peppers
pickled jalapeño slices : key=pickled-jalapeño-slices
pickled jalapeños : key=pickled-jalapeño-slices
pickled mustard greens
pickled mustard stem
pickled sliced jalapeno
pickled sushi ginger : kind=ginger
pindjur
ploughman's pickle
plum chutney : kind=chutney
prepared horseradish : key=horseradish
preserved mustard greens
preserved radish
preserved turnip
preserved vegetable
radish kimchi
red pepper hummus
red pickled ginger : kind=ginger
relish : ambiguous dish
rhubarb chutney : kind=chutney
roasted pepper spread
roasted red pepper hummus
salad toppers
salad topping
salsa macha
salted radish
sauerkraut : key=sauerkraut
sichuan preserved vegetable : proper=1
skordalia
sui mi ya cai
sushi ginger : kind=ginger
sweet brown pickle
sweet chutney : kind=chutney
sweet pickle relish : kind=relish key=pickle-relish
sweet relish : kind=relish
tamarind chutney : kind=chutney
tapenade
tarama
taramasalata
tempura flakes
tempura scraps
tenkasu
tianjin preserved vegetable
toasted nori strips
tomato and chilli chutney : kind=chutney
tomato chutney : kind=chutney
tomato relish : kind=relish key=tomato-relish
vegan kimchi
wasabi
wasabi paste
ya cai
zha cai
zucchini relish : kind=relish key=tomato-relish

# Pastes
@ FOOD noun mass group=paste kind=paste
achiote paste
adobo
adobo sauce
ají amarillo paste
ají panca paste
aka miso : kind=miso key=red-miso
ancho paste
annatto paste
bagoong : kind=paste
bagoong alamang : kind=paste
balti curry paste
balti paste
barley miso : kind=miso
basil paste
beef rendang paste
belacan : kind=paste key=shrimp-paste
bhuna paste
biber salcasi
biryani paste
broad bean chilli paste
broad bean paste
brown bean paste
brown miso : kind=miso
brown rice miso : kind=miso
butter chicken paste
capsicum paste
caramelised onion = caramelized onion : group=vegetable kind=onion noun
caribbean green seasoning : proper=1
cashew cheese : group=cheese kind=cheese
cashew nut paste
cashew paste
chile paste : key=chilli-paste
chili bean paste : key=doubanjiang
chili bean sauce
chili paste : key=chilli-paste
chilli bean paste : key=doubanjiang
chilli bean sauce
chilli garlic paste
chilli paste : key=chilli-paste
chipotle chile paste
chipotle chilli paste
chipotle paste
chipotle purée
chipotle sauce
cilantro paste
cincalok
coconut paste
coffee paste
coriander paste
curry paste : key=curry-paste
dark miso : kind=miso
doenjang
doubanjiang : key=doubanjiang
double-concentrated tomato paste
epis
fermented chilli bean paste
fermented shrimp
fermented soybean paste
fermented yellow beans
fried onion paste
frozen garlic
frozen ginger
galangal paste
garlic confit = confit garlic
garlic paste
garlic purée
garlic-ginger paste : key=ginger-garlic-paste
ginger and garlic paste : key=ginger-garlic-paste
ginger garlic purée
ginger paste
ginger purée
ginger-garlic paste = garlic and ginger paste : key=ginger-garlic-paste
gochujang : key=gochujang
gochujang paste : key=gochujang
green chilli paste = green chili paste
green curry paste
green seasoning
ground bean sauce
harissa : key=harissa
harissa paste : key=harissa
hatcho miso : kind=miso
hazelnut paste : group=nut
herb paste
hot bean paste
hot chili paste : key=chilli-paste
indian curry paste : proper=1
jalfrezi paste
jarred garlic
jerk marinade paste
jerk paste
jerk sauce
jerk seasoning paste
kapi : kind=paste ambiguous
kochujang : key=gochujang
korean chili paste : proper=1
korean chilli paste : key=gochujang proper=1
korean fermented soybean paste : proper=1
korean hot pepper paste : proper=1
korean red pepper paste : proper=1
korean soybean paste : proper=1
korma curry paste
korma paste
laksa paste
lazy garlic
lazy ginger
lemongrass paste
lemongrass purée
madras curry paste : proper=1
madras paste : proper=1
mam tom : kind=paste
massaman curry paste : key=massaman-curry-paste
massaman paste : key=massaman-curry-paste
medium curry paste
mild curry paste
minced garlic in a jar
miso : key=miso
miso paste : key=miso
mushroom paste
nam prik pao : key=thai-chilli-paste
nasi goreng paste
onion paste
pad thai paste : group=sauce kind=sauce
pad thai sauce : group=sauce kind=sauce
panang curry paste
peanut paste
pepper paste : key=red-pepper-paste
pixian doubanjiang
poppy seed filling
poppy seed paste
porcini paste
pure hazelnut paste : group=nut
ramen paste
recado rojo
recaito
red bell pepper paste
red curry paste
red miso : kind=miso key=red-miso
red miso paste : kind=miso
red pepper paste : key=red-pepper-paste
rempah
rendang paste
roasted chili paste
roasted chilli paste
roasted garlic paste
rocoto paste
rogan josh paste
rose harissa
rose harissa paste
saeujeot
salted shrimp
satay paste
sauce from the chipotles
seasoning paste
shiro miso : kind=miso key=white-miso
shrimp paste : kind=paste key=shrimp-paste
sichuan chilli bean paste : proper=1
sofrito
sour curry paste
soybean paste : key=miso
spicy bean paste
ssamjang
sweet bean sauce : key=sweet-bean-sauce
sweet flour sauce
sweet miso : kind=miso
sweet white miso : kind=miso
tamarind concentrate : key=tamarind-paste
tamarind extract
tamarind juice
tamarind liquid
tamarind paste : key=tamarind-paste
tamarind purée : key=tamarind-paste
tamarind sauce
tamarind water
tandoori curry paste
tandoori paste
tao jiew
tarka = tadka
tauco
taucu
terasi : kind=paste key=shrimp-paste
thai chilli jam : proper=1
thai chilli paste = thai chili paste : proper=1 key=thai-chilli-paste
thai curry paste : key=curry-paste proper=1
thai green curry paste : proper=1
thai red curry paste : proper=1
thai yellow curry paste : proper=1
tianmianjiang : key=sweet-bean-sauce
tikka curry paste
tikka masala curry paste
tikka masala paste
tikka paste
toban djan : key=doubanjiang
tom yum paste = tom yam paste
tomato concentrate : key=tomato-paste
tomato paste : key=tomato-paste
tomato paste concentrate
tomato powder paste
trassi : kind=paste
truffle paste
truffle sauce
turkish pepper paste : proper=1
turkish red pepper paste : proper=1
umami paste
vindaloo paste
wet jerk rub
white miso : kind=miso key=white-miso
white miso paste : kind=miso
yellow bean paste
yellow curry paste
yellow miso : kind=miso
yellow miso paste : kind=miso

# More of the shelf
@ FOOD noun mass group=sauce kind=sauce
banga : group=paste
beverage : ambiguous group=beverage liquid
browning sauce
carob : group=chocolate
carob chip = carob chips : group=chocolate
cassareep
condiment : ambiguous group=condiment
cream of coconut : group=syrup liquid
creole sauce : proper=1
dawadawa : group=paste
decaf : ambiguous group=beverage liquid
dipping sauce : liquid
dumpling sauce : liquid
espagnole sauce
fermented locust beans : group=paste
goma sauce
gunpowder spice : group=spice
gyoza dipping sauce : liquid
horehound : group=herb
iru : group=paste
jerk barbecue sauce
kava : group=beverage
malmsey : group=wine liquid
mornay sauce
mumbo sauce
nuoc cham : liquid
nuoc cham dipping sauce : liquid
ogiri : group=paste
oleomargarine : key=margarine group=fat
palm butter : group=paste
palm nut cream : group=paste
peanut soup base : group=paste
piccata sauce
pikliz : group=condiment
podi : group=spice
punch : ambiguous group=beverage liquid
ratafia : group=spirit liquid
sarsaparilla : group=beverage liquid
shito : group=condiment
soubise
still water : group=water liquid
suya paste : group=paste
sweetened cream of coconut : group=syrup liquid
taffy : group=confection
thecha : group=condiment
toasted sesame sauce
wintergreen : group=extract
woodruff : group=herb
