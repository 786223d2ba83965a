# Eggs, milk, cream, butter, yogurt, cheese; soya foods and other stand-ins.

# Eggs
@ FOOD noun group=egg kind=egg
albumen : mass key=egg-white
albumen powder : mass
boiled egg : key=hard-boiled-egg
carton egg : mass liquid
carton egg white : mass liquid
century egg
dried egg : mass
dried egg white : mass
duck egg
egg = eggs
egg powder : mass
egg substitute : mass liquid
egg wash = eggwash : mass
egg white = white of egg, whites of egg : kind=white
egg white powder : mass
egg yolk = yolk of egg, yolks of egg : kind=yolk
fried egg
goose egg
hard-boiled egg = hardboiled egg : key=hard-boiled-egg
hard-cooked egg
hen's egg : key=egg
jammy egg
liquid egg : mass liquid
liquid egg substitute : mass liquid
liquid egg white : mass liquid
ostrich egg
pasteurised egg = pasteurized egg
pasteurized egg product : mass liquid
pickled egg : group=condiment
pidan
poached egg
powdered egg : mass
powdered egg white : mass
preserved egg
quail egg = quail's egg
salted duck egg
salted egg
salted egg yolk : kind=yolk
soft-boiled egg
tea egg : group=prepared
thousand-year egg
whole egg : key=egg
whole egg powder : mass
yolk : key=egg-yolk kind=yolk

# Milk and drinks of milk
@ FOOD noun mass group=dairy liquid kind=milk
ayran : kind=ayran
baby formula : group=baby-food
breast milk : group=baby-food
buffalo milk
buttermilk : kind=buttermilk
camel milk
canned milk
chaach : kind=chaas
chaas : kind=chaas
chocolate milk
clabber
clabbered milk
cultured buttermilk : key=buttermilk kind=buttermilk
eggnog : kind=eggnog dish
evap milk
evaporated milk
ewe's milk : key=sheeps-milk
fat-free milk : key=skimmed-milk
formula milk : group=baby-food
full cream milk : key=whole-milk
full-fat milk : key=whole-milk
goat's milk = goat milk
homogenised milk
infant formula : group=baby-food
kefir : kind=kefir
lactose-free milk
light milk
long-life milk : key=long-life-milk
low-fat milk
malted milk
milk
milk kefir : kind=kefir key=kefir
non-fat milk : key=skimmed-milk
nonfat milk : key=skimmed-milk
one percent milk
part-skim milk
raw milk
reduced-fat milk
semi-skimmed milk
sheep's milk = sheep milk : key=sheeps-milk
skim milk : key=skimmed-milk
skimmed milk : key=skimmed-milk
soured milk = sour milk
two percent milk
uht milk : key=long-life-milk
warm milk : key=milk
whey
whole milk : key=whole-milk
@ FOOD noun mass group=dairy
buttermilk powder
caramel condensed milk : kind=milk
caramelised condensed milk : kind=milk
coffee creamer
coffee whitener
cond milk : kind=milk
condensed milk : kind=milk key=condensed-milk
dried buttermilk
dried milk : key=milk-powder
dry milk
dry milk powder
french vanilla creamer : proper=1
full cream milk powder
instant milk powder
khoa : key=khoya
khoya : key=khoya
liquid creamer
malt powder : key=malted-milk-powder
malted drink powder : key=malted-milk-powder
malted milk powder : key=malted-milk-powder
mawa : key=khoya
milk powder : key=milk-powder
non-dairy creamer
non-fat milk powder
nonfat dry milk
nonfat dry milk powder
nonfat milk powder
powdered buttermilk
powdered creamer
powdered milk : key=milk-powder
protein powder
rabri = rabdi
skim milk powder : key=skimmed-milk-powder
skimmed milk powder : key=skimmed-milk-powder
sweetened condensed milk : kind=milk key=condensed-milk
vanilla protein powder
whey powder
whey protein
whey protein powder
whole milk powder

# Plant milks
@ FOOD noun mass group=beverage liquid kind=milk
almond milk
canned coconut milk
cashew milk
coconut cream : kind=cream
coconut milk
coconut milk powder
dairy-free milk
full-fat coconut milk
hazelnut milk
hemp milk
light coconut milk
lite coconut milk
macadamia milk
non-dairy milk
nut milk
oat drink
oat milk
pea milk
plant milk
plant-based milk
reduced-fat coconut milk
rice milk
soy milk = soymilk : key=soy-milk
soya drink
soya milk : key=soy-milk
tinned coconut milk
vegan milk

# Cream
@ FOOD noun mass group=cream liquid
cashew cream
coffee cream
cooking cream
cream
cream alternative
culinary cream
dairy-free cream
double cream
eighteen percent cream
extra thick cream : key=extra-thick-double-cream
extra-thick double cream : key=extra-thick-double-cream
half and half cream
half-and-half = half n half, half 'n' half
heavy cream : key=heavy-cream kind=cream
heavy whipping cream : key=heavy-cream kind=cream
light cream
light whipping cream
long-life cream
manufacturing cream
media crema
oat cooking cream
oat cream
plant cream
pouring cream
pure cream
single cream
soy cooking cream
soy cream
soya cream
table cream
thickened cream
uht cream : proper=1
vegan cream
whipping cream
@ FOOD noun mass group=cream
aerosol cream : kind=cream key=squirty-cream
almond cream : group=pastry
buttercream = butter cream : group=confection kind=buttercream dish key=buttercream
canned whipped cream : kind=cream key=squirty-cream
chantilly cream
chocolate buttercream : group=confection kind=buttercream
clotted cream
cornish clotted cream : proper=1
crema : kind=crema key=mexican-crema
creme pat : group=prepared
crème anglaise : group=sauce kind=custard key=crème-anglaise
crème chantilly
crème fraîche : kind=cream
crème pâtissière : group=prepared key=pastry-cream
custard : group=sauce dish key=custard
dessert topping : kind=topping
dessert topping mix
devon cream : proper=1
diplomat cream : group=prepared
frangipane : group=pastry
fresh whipped cream
frozen whipped topping : kind=topping
kaymak : key=kaymak
lemon cream : group=prepared
malai : key=kaymak
mexican crema : kind=crema proper=1 key=mexican-crema
mexican sour cream : kind=crema proper=1
mock cream : kind=cream
pastry cream : group=prepared key=pastry-cream
pouring custard : group=sauce kind=custard key=crème-anglaise
ready-made custard : group=sauce key=custard
smetana : kind=cream key=smetana
smitane : kind=cream key=smetana
sour cream : key=sour-cream
soured cream : key=sour-cream
spray cream : kind=cream
squirty cream : kind=cream key=squirty-cream
tinned custard : group=sauce key=custard
vanilla buttercream : group=confection kind=buttercream key=buttercream
vanilla custard : group=sauce kind=custard key=crème-anglaise
vegan whipped topping : kind=topping
whipped cream
whipped dessert topping : kind=topping
whipped topping : kind=topping
whipped topping mix

# Butter and spreads
@ FOOD noun mass group=butter
baking block : group=fat kind=margarine
baking margarine : group=fat kind=margarine
baking spread : group=fat kind=margarine
beurre noisette : kind=butter key=brown-butter
brandy butter : group=sauce
brown butter : kind=butter key=brown-butter
browned butter : kind=butter
butter = butters
butter alternative : group=fat kind=butter
butter substitute : group=fat kind=butter
buttery spread : kind=butter
chilli butter : kind=butter
clarified butter : kind=butter
compound butter : kind=butter
cultured butter : kind=butter
dairy-free butter : group=fat kind=butter
dairy-free margarine : group=fat kind=margarine
dairy-free spread : group=fat kind=butter
desi ghee : key=ghee
european butter : kind=butter
european-style butter : kind=butter
garlic butter : kind=butter
ghee : key=ghee
goat butter : kind=butter
hard sauce : group=sauce
herb butter : kind=butter
light butter : kind=butter
margarine = marge, oleo : group=fat
miso butter : kind=butter
niter kibbeh
nitter kibbeh
olive spread : group=fat kind=spread
parsley butter : kind=butter
plant butter : group=fat kind=butter
plant-based butter : group=fat kind=butter
rum butter : group=sauce
salted butter : kind=butter
slightly salted butter : kind=butter
smen
soya margarine : group=fat kind=margarine
spiced clarified butter
spreadable butter : kind=butter
sunflower spread : group=fat kind=spread
sweet butter : kind=butter
truffle butter : kind=butter
unsalted butter : kind=butter
vanaspati : group=fat kind=ghee
vegan block : group=fat kind=butter
vegan butter : group=fat kind=butter
vegan margarine : group=fat kind=margarine
vegan spread : group=fat kind=butter
vegetable ghee : group=fat kind=ghee
vegetable spread : group=fat kind=spread
whipped butter : kind=butter

# Yogurt and fresh curds
@ FOOD noun mass group=dairy kind=yogurt
almond yogurt
cherry yogurt
coconut yogurt
curd : ambiguous key=curd
dahi : key=curd
dairy-free yogurt
fat-free yogurt
flavoured yogurt
fromage frais
frozen yogurt
fruit yogurt
full-fat greek yogurt
full-fat yogurt : key=natural-yogurt
goat's yogurt
greek yogurt = greek yoghurt : proper=1
greek-style yogurt = greek-style yoghurt : proper=1
hung curd
hung yogurt
labneh = labne, lebneh, labaneh
lemon yogurt
live yogurt
low-fat yogurt
natural yogurt : key=natural-yogurt
nonfat greek yogurt
nonfat yogurt
oat yogurt
plain greek yogurt
plain yogurt : key=natural-yogurt
plant-based yogurt
pot-set yogurt
probiotic yogurt
quark : ambiguous
set yogurt
sheep's yogurt
skyr
soy yogurt
soya yogurt
strained yogurt
strawberry yogurt
vanilla greek yogurt
vanilla yogurt
vegan yogurt
whole-milk yogurt : key=natural-yogurt
yogurt = yoghurt, yogurts, yoghourt
yogurt drink
@ FOOD noun mass group=dairy
butter pecan ice cream : kind=ice-cream
caramel ice cream : kind=ice-cream
choc ice : group=confection
chocolate ice cream : kind=ice-cream
coconut ice cream : kind=ice-cream
coffee ice cream : kind=ice-cream
cookies and cream ice cream : kind=ice-cream
dulce de leche ice cream : kind=ice-cream
fruit pop : group=confection
gelato : ambiguous
ice cream = icecream
ice cream sandwich : group=confection
ice lolly : group=confection key=ice-lolly
ice milk : kind=ice-cream
ice pop : group=confection key=ice-lolly
kulfi
lemon ice cream : kind=ice-cream
lemon sorbet : group=confection
lime sherbet
mango sorbet : group=confection
mint choc chip ice cream : kind=ice-cream
mint chocolate chip ice cream : kind=ice-cream
orange sherbet
pistachio ice cream : kind=ice-cream
rainbow sherbet
raspberry sorbet : group=confection
rum raisin ice cream : kind=ice-cream
salted caramel ice cream : kind=ice-cream
sherbet
soft serve ice cream : kind=ice-cream
soft-serve : kind=ice-cream
sorbet : group=confection ambiguous dish
strawberry ice cream : kind=ice-cream
vanilla ice cream : kind=ice-cream
vegan ice cream : kind=ice-cream

# Cheese
@ FOOD noun mass group=cheese kind=cheese
ackawi
aged cheddar
aged goat cheese
aged gouda
akkawi
akkawi cheese
american cheese : proper=1 key=american-cheese
american cheese slice : proper=1
anthotyro
appenzeller : proper=1
applewood cheddar
applewood smoked cheese
asadero
asiago : proper=1
asiago cheese
baby mozzarella
baby swiss cheese
baked camembert
baking camembert
barrel-aged feta
bleu d'auvergne
blue brie
blue cheese
blue cheese crumbles
blue stilton
bocconcini
brazilian curd cheese : proper=1
brick cheese
brick cream cheese
brie
brie cheese
brillat-savarin : proper=1
brown cheese : key=brunost
brunost : key=brunost
bryndza
buffalo mozzarella : key=fresh-mozzarella
buffalo mozzarella ball
burger cheese
burrata
caciocavallo
caerphilly : proper=1
camembert : proper=1
camembert cheese
cheddar : key=cheddar
cheddar cheese : key=cheddar
cheddar cheese powder
cheddar powder
cheese = cheeses
cheese curds = cheese curd
cheese slice
cheese spread
cheese stick
cheese triangle
chenna : key=chhena
cherry mozzarella
cheshire cheese : proper=1
chhena : key=chhena
chhurpi
chihuahua cheese : proper=1
chive cream cheese
chèvre : key=goats-cheese
ciliegine
co-jack
coalho cheese
colby : key=colby-cheese
colby cheese : key=colby-cheese
colby jack : key=colby-jack-cheese
colby jack cheese : key=colby-jack-cheese
comté : proper=1
comté cheese
cotija
cotija cheese
cottage cheese
cream cheese : key=cream-cheese
cream cheese spread : key=cream-cheese
cream cheese triangle
creamy blue cheese
crumbled blue cheese
crumbled feta
crumbly lancashire
curd cheese
dairy-free cheese
dairy-free cream cheese
danbo : proper=1
danish blue : proper=1
dill havarti
dolcelatte
double gloucester
edam : proper=1
edam cheese
emmental = emmenthal, emmentaler : proper=1
emmental cheese
emmenthaler
extra-mature cheddar : key=mature-cheddar
extra-sharp cheddar
farmer cheese : key=farmers-cheese
farmer's cheese : key=farmers-cheese
feta
feta cheese
fiesta blend cheese
fior di latte
fontina
fontina cheese
four cheese mix
four-cheese blend
fourme d'ambert : proper=1
fresh mozzarella : key=fresh-mozzarella
frying cheese
full-fat cream cheese : key=cream-cheese
full-fat soft cheese
garlic and herb cheese : key=garlic-and-herb-soft-cheese
garlic and herb soft cheese : key=garlic-and-herb-soft-cheese
garlic herb cream cheese
gjetost
goat cheese : key=goats-cheese
goat log
goat's cheese : key=goats-cheese
goat's cheese log
gorgonzola
gorgonzola cheese
gorgonzola dolce
gouda : proper=1
gouda cheese
grana : key=grana-padano ambiguous
grana padano : proper=2 key=grana-padano
grated cheese mix
grated mozzarella : key=low-moisture-mozzarella
grated parmesan : key=parmesan
graviera
greek salad cheese : proper=1 key=greek-salad-cheese
grilling cheese
gruyère : proper=1
gruyère cheese
halloumi
halloumi cheese
hard goat's cheese
havarti : proper=1
havarti cheese
herb cream cheese
herbed soft cheese
idiazabal : proper=1
imeruli
italian cheese blend = italian blend cheese : proper=1
italian hard cheese : proper=1
jack cheese : key=monterey-jack-cheese
kashar
kashkaval
kasseri
kefalograviera
kefalotyri
lancashire : proper=1 ambiguous
lancashire cheese : proper=1
leyden : proper=1
light cream cheese
limburger : proper=1
log of goat cheese
low-fat cream cheese : key=cream-cheese
low-moisture mozzarella : key=low-moisture-mozzarella
low-moisture part-skim mozzarella
maasdam : proper=1
mahón : proper=1
manchego
manchego cheese
marble cheese
mascarpone
mascarpone cheese
mature cheddar : key=mature-cheddar
mature cheddar cheese
mexican blend cheese : proper=1 key=mexican-blend-cheese
mexican cheese blend : key=mexican-blend-cheese proper=1
mexican four cheese blend : proper=1
mexican-style cheese blend
mild cheddar
mild cheddar cheese
mizithra = myzithra
mont d'or
monterey jack : key=monterey-jack-cheese
monterey jack cheese : proper=1 key=monterey-jack-cheese
mozzarella = mozz
mozzarella ball
mozzarella balls
mozzarella cheese
mozzarella di bufala : key=fresh-mozzarella
mozzarella pearl
mozzarella pearls
mozzarella stick
muenster : key=muenster-cheese
muenster cheese : proper=1 key=muenster-cheese
munster : key=munster-cheese
munster cheese : proper=1 key=munster-cheese
nabulsi cheese
neufchâtel : key=cream-cheese
oaxaca cheese : proper=1 key=oaxaca-cheese
oka cheese : proper=1
oscypek
paneer
paneer cheese
panela cheese
parmesan = parm, parm cheese : proper=1 key=parmesan
parmesan cheese : key=parmesan proper=1
parmesan cheese rind : proper=1
parmesan reggiano : proper=1
parmesan rind : proper=1
parmesan shavings : proper=1
parmigiano : key=parmigiano-reggiano
parmigiano reggiano cheese
parmigiano-reggiano : proper=1 key=parmigiano-reggiano
part-skim mozzarella
part-skim mozzarella cheese
part-skim ricotta
part-skim ricotta cheese
pasteurized prepared cheese product
pasteurized process cheese
pecorino
pecorino cheese
pecorino romano : proper=2
pecorino romano cheese
pepper jack : key=pepper-jack-cheese
pepper jack cheese : key=pepper-jack-cheese
pepperjack
petit suisse = petits-suisses : proper=2
pizza cheese
pizza cheese blend
pizza mozzarella
plant-based cheese
plastic cheese
pont-l'évêque : proper=1
pot cheese
process cheese
processed cheese
processed cheese food
processed cheese loaf : key=american-cheese
processed cheese slice
processed cheese spread
provolone
provolone cheese
provolone dolce
quark cheese
quesadilla cheese
quesillo : key=oaxaca-cheese
queso asadero
queso blanco
queso de freír
queso fresco
queso oaxaca
queso panela
queso quesadilla
raclette
raclette cheese
reblochon : proper=1
red leicester
reduced-fat cream cheese
requeijão
ricotta
ricotta cheese
ricotta salata
romano cheese
roquefort : proper=1
salad cheese : key=greek-salad-cheese
scamorza
sharp cheddar : key=mature-cheddar
sharp cheddar cheese : key=mature-cheddar
sharp white cheddar
sheep's cheese
shredded mexican blend
shredded mozzarella
shropshire blue
sirene : ambiguous
smoked cheddar
smoked cheese
smoked gouda
smoked mozzarella
smoked provolone
soft cheese : key=cream-cheese
soft goat's cheese : key=goats-cheese
spreadable cheese
squeaky cheese
stilton : proper=1
stilton cheese
stracciatella : key=stracciatella-cheese
stracciatella cheese : key=stracciatella-cheese
string cheese = cheese string
strong cheddar : key=mature-cheddar
sulguni
swiss cheese : proper=1
taco cheese
taleggio : proper=1
tasty cheddar
tasty cheese
tilsit : proper=1
tomme
tomme de savoie
triple cream brie
triple-cream cheese
tvorog
vacherin
vacherin fribourgeois
vegan cheddar
vegan cheese
vegan cream cheese
vegan feta
vegan mozzarella
vegan parmesan
vegetarian hard cheese
vegetarian italian-style hard cheese
vegetarian parmesan
vintage cheddar
wensleydale : proper=1
whipped cream cheese
white cheddar
white cheddar cheese
white stilton
whole milk ricotta cheese
whole-milk ricotta
yak cheese
yorkshire blue : proper=1
époisses : proper=1

# Soya foods and meat stand-ins
@ FOOD noun mass group=tofu
aburaage : kind=tofu
atsuage : kind=tofu
bean burger
bean curd : key=tofu
bean curd sheet
bean curd skin
beancurd
beancurd stick
deep-fried tofu : kind=tofu
dehydrated soya mince
dougan : kind=tofu
dried tofu : kind=tofu
dried tofu skin
egg tofu : kind=tofu
extra-firm tofu : kind=tofu
fermented bean curd : group=paste kind=tofu
fermented beancurd : group=paste kind=tofu
fermented tofu : group=paste kind=tofu
firm tofu : kind=tofu
five-spice tofu : kind=tofu
fried tofu : kind=tofu
fu ru : group=paste kind=tofu
inari pocket : kind=tofu
inari pockets : kind=tofu
meat-free chicken pieces
meat-free mince : kind=mince
meatless chicken
meatless crumbles : kind=mince
mock duck
mycoprotein pieces
natto
okara
plant mince : kind=mince
plant-based burger
plant-based chicken
plant-based chicken pieces
plant-based ground : kind=mince
plant-based mince : kind=mince
pressed tofu : kind=tofu
red fermented bean curd : group=paste kind=tofu
red fermented tofu : group=paste kind=tofu
seitan
silken tofu : kind=tofu
smoked tofu : kind=tofu
soft tofu : kind=tofu
soy chunks
soy mince
soya chunk
soya chunks
soya mince : key=textured-vegetable-protein
tempeh
textured soy protein
textured vegetable protein : key=textured-vegetable-protein
tofu : key=tofu
tofu puff : kind=tofu
tofu puffs : kind=tofu
tofu scramble
tofu skin : key=tofu-skin
tvp : key=textured-vegetable-protein
vegan burger
vegan chicken
vegan mince : kind=mince
vegetarian burger
vegetarian chicken pieces
vegetarian mince : kind=mince
veggie burger
veggie crumbles : kind=mince
veggie mince : kind=mince
wheat gluten block
young tofu
yuba : key=tofu-skin
