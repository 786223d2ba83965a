# Eggs, milk, cream, butter, yogurt, cheese; soya foods and other stand-ins.

# Eggs
@ FOOD noun group=egg kind=egg
albumen : mass key=egg-white
albumen powder : mass key=egg-white-powder
beaten egg : key=egg
carton egg : mass liquid key=liquid-egg
carton egg white : mass liquid key=liquid-egg-white
century egg : key=century-egg
dried egg : mass key=dried-egg
dried egg white : mass key=egg-white-powder
duck egg
egg = eggs
egg powder : mass key=dried-egg
egg substitute : mass liquid key=liquid-egg
egg wash = eggwash : mass
egg white = white of egg, whites of egg : kind=white
egg white powder : mass key=egg-white-powder
egg yolk = yolk of egg, yolks of egg : kind=yolk
extra-large egg : key=egg
free-range egg : key=egg
fried egg : key=soft-boiled-egg
goose egg
hard-boiled egg = boiled egg, hardboiled egg : key=hard-boiled-egg
hard-cooked egg : key=hard-boiled-egg
hen's egg : key=egg
jammy egg : key=soft-boiled-egg
large egg : key=egg
liquid egg : mass liquid key=liquid-egg
liquid egg substitute : mass liquid key=liquid-egg
liquid egg white : mass liquid key=liquid-egg-white
medium egg : key=egg
ostrich egg
pasteurised egg = pasteurized egg
pasteurized egg product : mass liquid key=liquid-egg
pickled egg : group=condiment
pidan : key=century-egg
poached egg : key=soft-boiled-egg
powdered egg : mass key=dried-egg
powdered egg white : mass key=egg-white-powder
preserved egg : key=century-egg
quail egg = quail's egg
salted duck egg : key=salted-egg
salted egg : key=salted-egg
salted egg yolk : kind=yolk
scrambled egg : group=prepared
soft-boiled egg : key=soft-boiled-egg
tea egg : group=prepared
thousand-year egg : key=century-egg
whole egg : key=egg
whole egg powder : mass key=dried-egg
yolk : key=egg-yolk kind=yolk

# Milk and drinks of milk
@ FOOD noun mass group=dairy liquid kind=milk
1% milk : key=low-fat-milk
2 percent milk : key=semi-skimmed-milk
2% milk : key=semi-skimmed-milk
ayran : kind=ayran
baby formula : group=baby-food key=infant-formula
breast milk : group=baby-food
buffalo milk
buttermilk : kind=buttermilk
camel milk
canned milk : key=evaporated-milk
chaach : kind=chaas key=chaas
chaas : kind=chaas key=chaas
chocolate milk
clabber : key=soured-milk
clabbered milk : key=soured-milk
cultured buttermilk : key=buttermilk kind=buttermilk
eggnog : kind=eggnog
evap milk : key=evaporated-milk
evaporated milk : key=evaporated-milk
ewe's milk : key=sheeps-milk
fat-free milk : key=skimmed-milk
formula milk : group=baby-food key=infant-formula
full cream milk : key=whole-milk
full-fat milk : key=whole-milk
goat's milk = goat milk
homogenised milk : key=whole-milk
infant formula : group=baby-food key=infant-formula
kefir : kind=kefir
lactose-free milk
lassi : kind=lassi
light milk : key=low-fat-milk
long-life milk : key=long-life-milk
low-fat milk : key=low-fat-milk
malted milk
milk
milk kefir : kind=kefir key=kefir
milkshake : kind=milkshake
non-fat milk : key=skimmed-milk
nonfat milk : key=skimmed-milk
one percent milk : key=low-fat-milk
part-skim milk : key=semi-skimmed-milk
raw milk
reduced-fat milk : key=semi-skimmed-milk
semi-skimmed milk : key=semi-skimmed-milk
sheep's milk = sheep milk : key=sheeps-milk
skim milk : key=skimmed-milk
skimmed milk : key=skimmed-milk
soured milk = sour milk : key=soured-milk
two percent milk : key=semi-skimmed-milk
uht milk : key=long-life-milk
warm milk : key=milk
whey
whole milk : key=whole-milk
@ FOOD noun mass group=dairy
buttermilk powder : key=buttermilk-powder
caramel condensed milk : kind=milk key=caramel-condensed-milk
caramelised condensed milk : kind=milk key=caramel-condensed-milk
coffee creamer : key=coffee-creamer
coffee whitener : key=coffee-creamer
cond milk : kind=milk key=condensed-milk
condensed milk : kind=milk key=condensed-milk
dried buttermilk : key=buttermilk-powder
dried milk : key=milk-powder
dry milk : key=milk-powder
dry milk powder : key=milk-powder
french vanilla creamer : key=coffee-creamer proper=1
full cream milk powder : key=milk-powder
instant milk powder : key=milk-powder
khoya = khoa : key=khoya
liquid creamer : key=coffee-creamer
malt powder : key=malted-milk-powder
malted drink powder : key=malted-milk-powder
malted milk powder : key=malted-milk-powder
mawa : key=khoya
milk powder : key=milk-powder
non-dairy creamer : key=coffee-creamer
non-fat milk powder : key=skimmed-milk-powder
nonfat dry milk : key=skimmed-milk-powder
nonfat dry milk powder : key=skimmed-milk-powder
nonfat milk powder : key=skimmed-milk-powder
powdered buttermilk : key=buttermilk-powder
powdered creamer : key=coffee-creamer
powdered milk : key=milk-powder
protein powder : key=whey-powder
rabri = rabdi
skim milk powder : key=skimmed-milk-powder
skimmed milk powder : key=skimmed-milk-powder
sweetened condensed milk : kind=milk key=condensed-milk
vanilla protein powder : key=whey-powder
whey powder : key=whey-powder
whey protein : key=whey-powder
whey protein powder : key=whey-powder
whole milk powder : key=milk-powder

# Plant milks
@ FOOD noun mass group=beverage liquid kind=milk
almond milk
canned coconut milk : key=coconut-milk
cashew milk
coconut cream : kind=cream
coconut milk : key=coconut-milk
coconut milk powder
dairy-free milk : key=plant-milk
full-fat coconut milk : key=coconut-milk
hazelnut milk
hemp milk
light coconut milk : key=light-coconut-milk
lite coconut milk : key=light-coconut-milk
macadamia milk
non-dairy milk : key=plant-milk
nut milk
oat drink : key=oat-milk
oat milk : key=oat-milk
pea milk
plant milk : key=plant-milk
plant-based milk : key=plant-milk
reduced-fat coconut milk : key=light-coconut-milk
rice milk
soy milk = soymilk, soya milk : key=soy-milk
soya drink : key=soy-milk
tinned coconut milk : key=coconut-milk
vegan milk : key=plant-milk

# Cream
@ FOOD noun mass group=cream liquid
cashew cream
coffee cream : key=table-cream
cooking cream : key=cooking-cream
cream
culinary cream : key=cooking-cream
dairy-free cream : key=oat-cream
double cream
eighteen percent cream : key=table-cream
elmlea style cream alternative = cream alternative
extra-thick double cream = extra thick cream
half and half cream : key=half-and-half
half-and-half = half n half, half 'n' half : key=half-and-half
heavy cream : key=heavy-cream kind=cream
heavy whipping cream : key=heavy-cream kind=cream
light cream
light whipping cream
long-life cream : key=uht-cream
manufacturing cream
media crema : key=table-cream
nestlé style table cream : key=table-cream
oat cooking cream : key=oat-cream
oat cream : key=oat-cream
plant cream : key=oat-cream
pouring cream
pure cream
single cream
soy cooking cream : key=cooking-cream
soy cream : key=oat-cream
soya cream : key=oat-cream
table cream : key=table-cream
thickened cream
uht cream : proper=1 key=uht-cream
vegan cream : key=oat-cream
whipping cream
@ FOOD noun mass group=cream
aerosol cream : kind=cream key=squirty-cream
almond cream : group=pastry key=frangipane
buttercream = butter cream : group=confection kind=buttercream key=buttercream
canned whipped cream : kind=cream key=squirty-cream
carton of custard : group=sauce key=custard
chantilly cream : key=whipped-cream
chocolate buttercream : group=confection kind=buttercream key=buttercream
clotted cream : key=clotted-cream
cornish clotted cream : key=clotted-cream proper=1
creme pat : group=prepared key=pastry-cream
crème anglaise : group=sauce kind=custard key=crème-anglaise
crème chantilly : key=whipped-cream
crème fraîche = creme fraiche : kind=cream
crème pat : group=prepared key=pastry-cream
crème pâtissière : group=prepared key=pastry-cream
custard : group=sauce key=custard
dessert topping : kind=topping key=whipped-topping
dessert topping mix : key=whipped-topping-mix
devon cream : key=clotted-cream proper=1
diplomat cream : group=prepared
dream topping : key=whipped-topping-mix
frangipane : group=pastry key=frangipane
fresh whipped cream : key=whipped-cream
frozen whipped topping : kind=topping key=whipped-topping
kaymak : key=kaymak
lemon cream : group=prepared
malai : key=kaymak
mexican crema = crema : kind=crema proper=1 key=mexican-crema
mexican sour cream : kind=crema key=mexican-crema proper=1
mock cream : kind=cream
pastry cream : group=prepared key=pastry-cream
pouring custard : group=sauce kind=custard key=crème-anglaise
ready-made custard : group=sauce key=custard
smetana = smitane : kind=cream
sour cream : key=sour-cream
soured cream : key=sour-cream
spray cream : kind=cream key=squirty-cream
squirty cream : kind=cream key=squirty-cream
tinned custard : group=sauce key=custard
vanilla buttercream : group=confection kind=buttercream key=buttercream
vanilla custard : group=sauce kind=custard key=crème-anglaise
vegan whipped topping : kind=topping key=whipped-topping
whipped cream : key=whipped-cream
whipped dessert topping : kind=topping key=whipped-topping
whipped topping : kind=topping key=whipped-topping
whipped topping mix : key=whipped-topping-mix

# Butter and spreads
@ FOOD noun mass group=butter
baking block : group=fat kind=margarine key=baking-spread
baking margarine : group=fat kind=margarine key=baking-spread
baking spread : group=fat kind=margarine key=baking-spread
beurre noisette : kind=butter key=brown-butter
brandy butter : group=sauce key=brandy-butter
brown butter : kind=butter key=brown-butter
browned butter : kind=butter key=brown-butter
butter = butters : key=butter
butter alternative : group=fat kind=butter key=butter-substitute
butter substitute : group=fat kind=butter key=butter-substitute
buttery spread : kind=butter key=spreadable-butter
chilli butter : kind=butter key=truffle-butter
clarified butter : kind=butter
cold butter : key=butter kind=butter
compound butter : kind=butter key=herb-butter
cultured butter : kind=butter key=cultured-butter
dairy-free butter : group=fat kind=butter key=vegan-butter
dairy-free margarine : group=fat kind=margarine key=vegan-margarine
dairy-free spread : group=fat kind=butter key=vegan-butter
desi ghee : key=ghee
european butter : kind=butter key=cultured-butter
european-style butter : kind=butter key=cultured-butter
garlic butter : kind=butter
ghee : key=ghee
goat butter : kind=butter
hard sauce : group=sauce key=brandy-butter
herb butter : kind=butter key=herb-butter
light butter : kind=butter key=spreadable-butter
margarine = marge, oleo : group=fat key=margarine
melted butter : key=butter kind=butter
miso butter : kind=butter key=truffle-butter
niter kibbeh : key=smen
nitter kibbeh : key=smen
olive spread : group=fat kind=spread key=sunflower-spread
parsley butter : kind=butter key=herb-butter
plant butter : group=fat kind=butter key=vegan-butter
plant-based butter : group=fat kind=butter key=vegan-butter
room-temperature butter : key=butter kind=butter
rum butter : group=sauce key=brandy-butter
salted butter : kind=butter
slightly salted butter : kind=butter
smen : key=smen
soft butter : key=butter kind=butter
soya margarine : group=fat kind=margarine key=vegan-margarine
spiced clarified butter : key=smen
spreadable butter : kind=butter key=spreadable-butter
stick margarine : group=fat key=margarine
stick of butter : key=butter
sunflower spread : group=fat kind=spread key=sunflower-spread
sweet butter : kind=butter key=unsalted-butter
truffle butter : kind=butter key=truffle-butter
tub margarine : group=fat key=margarine
unsalted butter : kind=butter key=unsalted-butter
vanaspati : group=fat kind=ghee key=vegetable-ghee
vegan block : group=fat kind=butter key=vegan-butter
vegan butter : group=fat kind=butter key=vegan-butter
vegan margarine : group=fat kind=margarine key=vegan-margarine
vegan spread : group=fat kind=butter key=vegan-butter
vegetable ghee : group=fat kind=ghee key=vegetable-ghee
vegetable spread : group=fat kind=spread key=sunflower-spread
whipped butter : kind=butter

# Yogurt and fresh curds
@ FOOD noun mass group=dairy kind=yogurt
2% greek yogurt : key=greek-yogurt
almond yogurt : key=coconut-yogurt
cherry yogurt : key=fruit-yogurt
coconut yogurt : key=coconut-yogurt
curd : ambiguous key=curd
dahi : ambiguous key=curd
dairy-free yogurt : key=coconut-yogurt
fat-free yogurt : key=low-fat-yogurt
flavoured yogurt : key=fruit-yogurt
fromage frais
frozen yogurt
fruit yogurt : key=fruit-yogurt
full-fat greek yogurt : key=greek-yogurt
full-fat yogurt : key=natural-yogurt
goat's yogurt : key=goats-yogurt
greek yogurt = greek yoghurt : proper=1 key=greek-yogurt
greek-style yogurt = greek-style yoghurt : proper=1
hung curd : key=hung-curd
hung yogurt : key=hung-curd
labneh = labne, lebneh, labaneh
lemon yogurt : key=fruit-yogurt
live yogurt : key=live-yogurt
low-fat yogurt : key=low-fat-yogurt
natural yogurt : key=natural-yogurt
nonfat greek yogurt : key=greek-yogurt
nonfat yogurt : key=low-fat-yogurt
oat yogurt : key=coconut-yogurt
plain greek yogurt : key=greek-yogurt
plain yogurt : key=natural-yogurt
plant-based yogurt : key=coconut-yogurt
pot-set yogurt : key=set-yogurt
probiotic yogurt : key=live-yogurt
quark : ambiguous
set yogurt : key=set-yogurt
sheep's yogurt : key=goats-yogurt
skyr
soy yogurt : key=coconut-yogurt
soya yogurt : key=coconut-yogurt
strained yogurt : key=hung-curd
strawberry yogurt : key=fruit-yogurt
vanilla greek yogurt : key=vanilla-yogurt
vanilla yogurt : key=vanilla-yogurt
vegan yogurt : key=coconut-yogurt
whole milk yogurt
whole-milk yogurt : key=natural-yogurt
yogurt = yoghurt, yogurts, yoghourt
yogurt drink
@ FOOD noun mass group=dairy
butter pecan ice cream : kind=ice-cream key=coconut-ice-cream
caramel ice cream : kind=ice-cream key=caramel-ice-cream
choc ice : group=confection key=ice-cream-sandwich
chocolate ice cream : kind=ice-cream
coconut ice cream : kind=ice-cream key=coconut-ice-cream
coffee ice cream : kind=ice-cream
cookies and cream ice cream : kind=ice-cream key=coconut-ice-cream
dulce de leche ice cream : kind=ice-cream key=caramel-ice-cream
fruit pop : group=confection key=ice-lolly
gelato
ice cream = icecream
ice cream sandwich : group=confection key=ice-cream-sandwich
ice lolly : group=confection key=ice-lolly
ice milk : kind=ice-cream key=soft-serve
ice pop : group=confection key=ice-lolly
juice bar frozen : group=confection key=ice-lolly
kulfi
lemon ice cream : kind=ice-cream key=coconut-ice-cream
lemon sorbet : group=confection key=sorbet
lime sherbet : key=sherbet
mango sorbet : group=confection key=sorbet
mint choc chip ice cream : kind=ice-cream key=mint-chocolate-chip-ice-cream
mint chocolate chip ice cream : kind=ice-cream key=mint-chocolate-chip-ice-cream
orange sherbet : key=sherbet
pistachio ice cream : kind=ice-cream key=coconut-ice-cream
rainbow sherbet : key=sherbet
raspberry sorbet : group=confection key=sorbet
rum raisin ice cream : kind=ice-cream key=coconut-ice-cream
salted caramel ice cream : kind=ice-cream key=caramel-ice-cream
sherbet : key=sherbet
soft serve ice cream : kind=ice-cream key=soft-serve
soft-serve : kind=ice-cream key=soft-serve
sorbet : group=confection key=sorbet
strawberry ice cream : kind=ice-cream
vanilla ice cream : kind=ice-cream
vegan ice cream : kind=ice-cream key=coconut-ice-cream

# Cheese
@ FOOD noun mass group=cheese kind=cheese
ackawi : key=nabulsi-cheese
aged cheddar : key=mature-cheddar
aged goat cheese : key=hard-goats-cheese
aged gouda : key=gouda
akkawi : key=nabulsi-cheese
akkawi cheese : key=nabulsi-cheese
american cheese : proper=1 key=american-cheese
american cheese slice : key=cheese-slice proper=1
anthotyro : key=mizithra
appenzeller : proper=1
applewood cheddar : key=smoked-cheddar
applewood smoked cheese : key=smoked-gouda
asadero : key=chihuahua-cheese
asiago : proper=1 key=asiago
asiago cheese : key=asiago
baby mozzarella : key=bocconcini
baby swiss cheese
baked camembert : key=baked-camembert
baking camembert : key=baked-camembert
ball of mozzarella : key=fresh-mozzarella
balls of mozzarella : key=fresh-mozzarella
barrel-aged feta : key=greek-salad-cheese
bleu d'auvergne : key=saint-agur-style-cheese
block cream cheese : key=cream-cheese
blue brie : key=cambozola-style-cheese
blue cheese : key=blue-cheese
blue cheese crumbles : key=blue-cheese
blue stilton : key=stilton
bocconcini : key=bocconcini
brazilian curd cheese : proper=1 key=brazilian-curd-cheese
brick cheese
brick cream cheese : key=cream-cheese
brie : key=brie
brie cheese : key=brie
brillat-savarin : proper=1 key=brillat-savarin
brown cheese : key=brunost
brunost : key=brunost
bryndza : key=bryndza
buffalo mozzarella : key=fresh-mozzarella
buffalo mozzarella ball : key=fresh-mozzarella
burger cheese : key=american-cheese
burrata
caciocavallo
caerphilly : proper=1
cambozola style cheese : proper=1 key=cambozola-style-cheese
camembert : proper=1 key=camembert
camembert cheese : key=camembert
cashel blue : proper=1
cheddar : key=cheddar
cheddar cheese : key=cheddar
cheddar cheese powder : key=cheddar-powder
cheddar powder : key=cheddar-powder
cheese = cheeses
cheese curds = cheese curd : key=cheese-curds
cheese slice : key=cheese-slice
cheese spread : key=cheese-spread
cheese stick : key=string-cheese
cheese triangle : key=cheese-spread
cherry mozzarella : key=bocconcini
cheshire cheese : proper=1
chevre : key=goats-cheese
chhena = chenna
chhurpi : key=yak-cheese
chihuahua cheese : proper=1 key=chihuahua-cheese
chive cream cheese : key=garlic-and-herb-soft-cheese
chèvre : key=goats-cheese
ciliegine : key=bocconcini
co-jack : key=colby-jack-cheese
coalho cheese : key=brazilian-curd-cheese
colby cheese = colby
colby jack cheese = colby jack : key=colby-jack-cheese
comté : proper=1 key=comté
comté cheese : key=comté
cotija : key=cotija
cotija cheese : key=cotija
cottage cheese
cream cheese = philly : key=cream-cheese
cream cheese spread : key=cream-cheese
cream cheese triangle : key=cheese-spread
creamy blue cheese : key=cambozola-style-cheese
crumbled blue cheese : key=blue-cheese
crumbled feta : key=feta
crumbly lancashire : key=lancashire
curd cheese : key=farmers-cheese
dairy-free cheese : key=vegan-cheese
dairy-free cream cheese : key=vegan-cream-cheese
danbo : proper=1
danish blue : proper=1
dill havarti : key=havarti
dolcelatte : key=gorgonzola
double gloucester
edam : proper=1 key=edam
edam cheese : key=edam
emmental = emmenthal, emmentaler : proper=1 key=emmental
emmental cheese : key=emmental
emmenthaler : key=emmental
extra-mature cheddar : key=mature-cheddar
extra-sharp cheddar : key=mature-cheddar
farmer's cheese = farmer cheese : key=farmers-cheese
feta : key=feta
feta cheese : key=feta
fiesta blend cheese : key=mexican-blend-cheese
fior di latte : key=fresh-mozzarella
fontina : key=fontina
fontina cheese : key=fontina
four cheese mix : key=four-cheese-mix
four-cheese blend : key=mexican-blend-cheese
fourme d'ambert : key=saint-agur-style-cheese
fresh mozzarella : key=fresh-mozzarella
frying cheese : key=queso-de-freír
full-fat cream cheese : key=cream-cheese
full-fat soft cheese : key=cream-cheese
garlic and herb soft cheese = garlic and herb cheese : key=garlic-and-herb-soft-cheese
garlic herb cream cheese : key=garlic-and-herb-soft-cheese
gjetost : key=brunost
goat cheese : key=goats-cheese
goat log : key=goat-log
goat's cheese : key=goats-cheese
goat's cheese log : key=goat-log
gorgonzola : key=gorgonzola
gorgonzola cheese : key=gorgonzola
gorgonzola dolce : key=gorgonzola
gouda : proper=1 key=gouda
gouda cheese : key=gouda
grana padano = grana : proper=2
grated cheese : key=cheese
grated cheese mix : key=four-cheese-mix
grated mozzarella : key=low-moisture-mozzarella
grated parmesan : key=parmesan
graviera : key=kefalotyri
greek salad cheese = salad cheese : proper=1 key=greek-salad-cheese
grilling cheese : key=halloumi
gruyere : key=gruyère
gruyère : proper=1 key=gruyère
gruyère cheese : key=gruyère
halloumi : key=halloumi
halloumi cheese : key=halloumi
hard goat's cheese : key=hard-goats-cheese
havarti : proper=1 key=havarti
havarti cheese : key=havarti
herb cream cheese : key=garlic-and-herb-soft-cheese
herbed soft cheese : key=garlic-and-herb-soft-cheese
idiazabal : proper=1
imeruli : key=sulguni
italian cheese blend = italian blend cheese : proper=1 key=italian-cheese-blend
italian hard cheese : proper=1 key=italian-hard-cheese
jarlsberg style cheese : proper=1 key=jarlsberg-style-cheese
kashar : key=kashkaval
kashkaval : key=kashkaval
kasseri : key=kashkaval
kefalograviera : key=kefalotyri
kefalotyri : key=kefalotyri
lancashire : proper=1 key=lancashire
lancashire cheese : proper=1
leerdam style cheese : proper=1 key=leerdam-style-cheese
leyden : key=leerdam-style-cheese
light cream cheese : key=cream-cheese
limburger : proper=1
log of goat cheese : key=goat-log
low-fat cream cheese : key=cream-cheese
low-moisture mozzarella : key=low-moisture-mozzarella
low-moisture part-skim mozzarella : key=low-moisture-mozzarella
maasdam : key=jarlsberg-style-cheese
mahón : proper=1
manchego : key=manchego
manchego cheese : key=manchego
marble cheese : key=colby-jack-cheese
mascarpone : key=mascarpone
mascarpone cheese : key=mascarpone
mature cheddar : key=mature-cheddar
mature cheddar cheese : key=mature-cheddar
mexican blend cheese : proper=1 key=mexican-blend-cheese
mexican cheese blend : key=mexican-blend-cheese proper=1
mexican four cheese blend : key=mexican-blend-cheese proper=1
mexican-style cheese blend : key=mexican-blend-cheese
mild cheddar : key=mild-cheddar
mild cheddar cheese : key=mild-cheddar
mizithra = myzithra : key=mizithra
mont d'or : key=vacherin
monterey jack : key=monterey-jack-cheese
monterey jack cheese = jack cheese : proper=1 key=monterey-jack-cheese
mozzarella = mozz : key=mozzarella
mozzarella ball : key=fresh-mozzarella
mozzarella balls : key=bocconcini
mozzarella cheese : key=mozzarella
mozzarella di bufala : key=fresh-mozzarella
mozzarella pearl : key=bocconcini
mozzarella pearls : key=bocconcini
mozzarella stick : key=string-cheese
muenster cheese = muenster : proper=1
munster cheese = munster : proper=1
nabulsi cheese : key=nabulsi-cheese
neufchâtel : key=cream-cheese
oaxaca cheese : proper=1 key=oaxaca-cheese
oka cheese : proper=1
oscypek
paneer : key=paneer
paneer cheese : key=paneer
panela cheese : key=panela-cheese
parmesan = parm, parm cheese : proper=1 key=parmesan
parmesan cheese : key=parmesan proper=1
parmesan cheese rind : key=parmesan-rind proper=1
parmesan reggiano : key=parmesan proper=1
parmesan rind : proper=1 key=parmesan-rind
parmesan shavings : key=parmesan proper=1
parmigiano : key=parmigiano-reggiano
parmigiano reggiano cheese : key=parmigiano-reggiano
parmigiano-reggiano : proper=1 key=parmigiano-reggiano
part-skim mozzarella : key=low-moisture-mozzarella
part-skim mozzarella cheese : key=low-moisture-mozzarella
part-skim ricotta : key=whole-milk-ricotta
part-skim ricotta cheese : key=whole-milk-ricotta
pasteurized prepared cheese product : key=american-cheese
pasteurized process cheese : key=american-cheese
pecorino : key=pecorino
pecorino cheese : key=pecorino
pecorino romano : proper=2 key=pecorino-romano
pecorino romano cheese : key=pecorino-romano
pepper jack : key=pepper-jack-cheese
pepper jack cheese : key=pepper-jack-cheese
pepperjack : key=pepper-jack-cheese
petit suisse = petits-suisses : proper=2
pizza cheese : key=italian-cheese-blend
pizza cheese blend : key=italian-cheese-blend
pizza mozzarella : key=low-moisture-mozzarella
plant-based cheese : key=vegan-cheese
plastic cheese : key=american-cheese
pont-l'évêque : proper=1
port salut : proper=2
pot cheese : key=farmers-cheese
process cheese : key=american-cheese
processed cheese : key=american-cheese
processed cheese food : key=american-cheese
processed cheese loaf : key=american-cheese
processed cheese slice : key=cheese-slice
processed cheese spread : key=cheese-spread
provolone : key=provolone
provolone cheese : key=provolone
provolone dolce : key=provolone
quark cheese
quesadilla cheese : key=chihuahua-cheese
quesillo : key=oaxaca-cheese
queso asadero : key=chihuahua-cheese
queso blanco
queso de freír : key=queso-de-freír
queso fresco
queso oaxaca : key=oaxaca-cheese
queso panela : key=panela-cheese
queso quesadilla : key=chihuahua-cheese
raclette : key=raclette
raclette cheese : key=raclette
reblochon : proper=1 key=reblochon
red leicester
reduced-fat cream cheese : key=cream-cheese
requeijão : key=brazilian-curd-cheese
ricotta : key=ricotta
ricotta cheese : key=ricotta
ricotta salata
romano cheese : key=pecorino-romano
roquefort : proper=1
saint agur style cheese : proper=2 key=saint-agur-style-cheese
scamorza : key=smoked-mozzarella
sharp cheddar : key=mature-cheddar
sharp cheddar cheese : key=mature-cheddar
sharp white cheddar : key=white-cheddar
sheep's cheese
shredded cheese : key=cheese
shredded mexican blend : key=mexican-blend-cheese
shredded mozzarella : key=low-moisture-mozzarella
shropshire blue : key=yorkshire-blue
sirene : key=bryndza
smoked cheddar : key=smoked-cheddar
smoked cheese : key=smoked-gouda
smoked gouda : key=smoked-gouda
smoked mozzarella : key=smoked-mozzarella
smoked provolone
soft cheese : key=cream-cheese
soft goat's cheese : key=goats-cheese
spreadable cheese : key=cheese-spread
squeaky cheese : key=cheese-curds
stilton : proper=1 key=stilton
stilton cheese : key=stilton
stracciatella cheese = stracciatella
string cheese = cheese string : key=string-cheese
strong cheddar : key=mature-cheddar
sulguni : key=sulguni
swiss cheese : proper=1
taco cheese : key=mexican-blend-cheese
taleggio : proper=1
tasty cheddar : key=mature-cheddar
tasty cheese
tilsit : proper=1
tomme : key=reblochon
tomme de savoie : key=reblochon
triple cream brie : key=brillat-savarin
triple-cream cheese : key=brillat-savarin
tvorog : key=farmers-cheese
vacherin : key=vacherin
vacherin fribourgeois : key=vacherin
vegan cheddar : key=vegan-cheese
vegan cheese : key=vegan-cheese
vegan cream cheese : key=vegan-cream-cheese
vegan feta : key=vegan-cheese
vegan mozzarella : key=vegan-cheese
vegan parmesan : key=vegan-cheese
vegetarian hard cheese : key=italian-hard-cheese
vegetarian italian-style hard cheese : key=italian-hard-cheese
vegetarian parmesan : key=italian-hard-cheese
vintage cheddar : key=mature-cheddar
wensleydale : proper=1
whipped cream cheese
white cheddar : key=white-cheddar
white cheddar cheese : key=white-cheddar
white stilton
whole milk ricotta cheese : key=whole-milk-ricotta
whole-milk ricotta : key=whole-milk-ricotta
yak cheese : key=yak-cheese
yorkshire blue : proper=1 key=yorkshire-blue
époisses : proper=1

# Soya foods and meat stand-ins
@ FOOD noun mass group=tofu
aburaage : kind=tofu key=aburaage
atsuage : kind=tofu key=fried-tofu
bean burger : key=veggie-burger
bean curd : key=tofu
bean curd sheet : key=tofu-skin
bean curd skin : key=tofu-skin
beancurd : key=tofu
beancurd stick : key=tofu-skin
deep-fried tofu : kind=tofu key=fried-tofu
dehydrated soya mince : key=textured-vegetable-protein
dougan : kind=tofu key=pressed-tofu
dried tofu : kind=tofu key=pressed-tofu
dried tofu skin : key=tofu-skin
egg tofu : kind=tofu
extra-firm tofu : kind=tofu
fermented bean curd : group=paste kind=tofu key=fermented-tofu
fermented beancurd : group=paste kind=tofu key=fermented-tofu
fermented tofu : group=paste kind=tofu key=fermented-tofu
firm tofu : kind=tofu
five-spice tofu : kind=tofu key=pressed-tofu
fried tofu : kind=tofu key=fried-tofu
fu ru : group=paste kind=tofu key=fermented-tofu
inari pocket : kind=tofu key=aburaage
inari pockets : kind=tofu key=aburaage
meat-free chicken pieces : key=mycoprotein-pieces
meat-free mince : kind=mince key=vegan-mince
meatless chicken : key=mycoprotein-pieces
meatless crumbles : kind=mince key=vegan-mince
mock duck : key=seitan
mycoprotein pieces : key=mycoprotein-pieces
natto
okara
plant mince : kind=mince key=vegan-mince
plant-based burger : key=veggie-burger
plant-based chicken : key=mycoprotein-pieces
plant-based chicken pieces : key=mycoprotein-pieces
plant-based ground : kind=mince key=vegan-mince
plant-based mince : kind=mince key=vegan-mince
pressed tofu : kind=tofu key=pressed-tofu
red fermented bean curd : group=paste kind=tofu key=fermented-tofu
red fermented tofu : group=paste kind=tofu key=fermented-tofu
seitan : key=seitan
silken tofu : kind=tofu
smoked tofu : kind=tofu
soft tofu : kind=tofu
soy chunks : key=textured-vegetable-protein
soy mince : key=textured-vegetable-protein
soya chunk : key=textured-vegetable-protein
soya chunks : key=textured-vegetable-protein
soya mince : key=textured-vegetable-protein
tempeh
textured soy protein : key=textured-vegetable-protein
textured vegetable protein : key=textured-vegetable-protein
tofu : key=tofu
tofu puff : kind=tofu key=fried-tofu
tofu puffs : kind=tofu key=fried-tofu
tofu scramble
tofu skin : key=tofu-skin
tvp : key=textured-vegetable-protein
vegan burger : key=veggie-burger
vegan chicken : key=mycoprotein-pieces
vegan mince : kind=mince key=vegan-mince
vegetarian burger : key=veggie-burger
vegetarian chicken pieces : key=mycoprotein-pieces
vegetarian mince : kind=mince key=vegan-mince
veggie burger : key=veggie-burger
veggie crumbles : kind=mince key=vegan-mince
veggie mince : kind=mince key=vegan-mince
wheat gluten block : key=seitan
young tofu
yuba : key=tofu-skin
