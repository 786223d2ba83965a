# Vegetables, leaves, roots, mushrooms and sea vegetables, fresh and preserved.
#
# What the foods-*.lex files say of a food:
#   group=     one broad class: vegetable, spice, poultry, ground-meat ...
#   key=       shared by names of one purchase (aubergine, eggplant); not printed
#   kind=      the wider word by which talk comes back to it ("the squash")
#   proper=N   its first N words are written with a capital
#   mass       no plural: rice, butter
#   liquid     an ounce of it may be a fluid ounce
#   free       needs no amount: salt, water, oil
#   dish       also the name of a dish
#   ambiguous  an everyday word or a dish too: wants an amount or a verb beside it

# Onions and garlic
@ FOOD noun group=vegetable kind=onion
asian shallot : kind=shallot proper=1 key=asian-shallot
baby onion : key=pearl-onion
banana shallot : kind=shallot key=banana-shallot
bermuda onion : proper=1
button onion : key=pearl-onion
calçot
cipollini : key=cipollini-onion
cipollini onion = cipolline onion : key=cipollini-onion
cocktail onion : key=silverskin-onion
crispy fried onion : key=crispy-onion
crispy fried shallot : kind=shallot key=fried-shallot
crispy onion : key=crispy-onion
crispy shallot : kind=shallot key=fried-shallot
echalion : kind=shallot key=banana-shallot
echalion shallot : kind=shallot key=banana-shallot
french fried onion : key=crispy-onion proper=1
fried onion : key=crispy-onion
fried shallot : kind=shallot key=fried-shallot
green onion : key=spring-onion
maui onion : proper=1
onion
pearl onion : key=pearl-onion
pickling onion
red asian shallot : kind=shallot key=asian-shallot
red onion
salad onion : key=spring-onion
scallion : key=spring-onion
shallot
silverskin onion : key=silverskin-onion
spanish onion : proper=1
spring onion : key=spring-onion
sweet onion
thai shallot : kind=shallot key=asian-shallot proper=1
vidalia onion : proper=1
walla walla onion : proper=2
white onion
yellow onion
@ FOOD noun group=vegetable
baby leek : kind=leek
black garlic : mass kind=garlic
elephant garlic : mass kind=garlic
garlic : mass
garlic bulb : key=garlic
garlic scape : key=garlic-scape
garlic shoot : key=garlic-scape
green garlic : mass kind=garlic key=green-garlic
leek
onion ring
ramp : ambiguous group=leaf-vegetable
ramsons : mass group=leaf-vegetable key=wild-garlic
roasted garlic : mass kind=garlic
single clove garlic : mass kind=garlic key=solo-garlic
solo garlic : mass kind=garlic key=solo-garlic
spring garlic : mass kind=garlic key=green-garlic
wet garlic : mass kind=garlic key=green-garlic
wild garlic : mass group=leaf-vegetable key=wild-garlic

# Tomatoes
@ FOOD noun group=vegetable kind=tomato
baby plum tomato = plum toms
beef tomato : key=beefsteak-tomato
beefsteak tomato : key=beefsteak-tomato
canned tomato : key=canned-tomato
cherry tomato = cherry toms
chopped tomato = chopped toms : key=diced-tomato
crushed tomato
diced tomato : key=diced-tomato
fire-roasted tomato
grape tomato
green tomato
heirloom tomato : key=heirloom-tomato
heritage tomato : key=heirloom-tomato
oven-dried tomato : key=sunblush-tomato
plum tomato
polpa : mass key=polpa
roma tomato : proper=1
salad tomato
san marzano tomato : proper=2
semi-dried tomato : key=sunblush-tomato
semi-sundried tomato : key=sunblush-tomato
stewed tomato
sun-dried tomato = sundried tomato
sunblush tomato : key=sunblush-tomato
tamarillo : kind=tamarillo key=tree-tomato
tinned tomato = tinned toms, tin toms : key=canned-tomato
tomatillo : kind=tomatillo
tomato = toms, tommy toms
tomato polpa : mass key=polpa
tomatoes on the vine : key=vine-tomato
tree tomato : kind=tamarillo key=tree-tomato
vine tomato : key=vine-tomato
vine-ripened tomato : key=vine-tomato
whole peeled tomato

# Peppers and fresh chillies
@ FOOD noun group=vegetable kind=pepper
banana pepper
bell pepper
capsicum : key=bell-pepper
cherry pepper
cubanelle : key=cubanelle-pepper
cubanelle pepper : key=cubanelle-pepper
green bell pepper
green pepper
hot cherry pepper
hungarian wax pepper : key=wax-pepper proper=1
jarred roasted pepper : key=roasted-red-pepper
mini pepper : key=mini-pepper
mini sweet pepper : key=mini-pepper
orange bell pepper
orange pepper
padron : key=padrón-pepper
padrón pepper : proper=1 key=padrón-pepper
pepperoncini = peperoncini : mass key=pepperoncini
pepperoncini pepper : mass key=pepperoncini
pimiento = pimento
piquillo : key=piquillo-pepper
piquillo pepper : key=piquillo-pepper
pointed pepper : key=romano-pepper
ramiro pepper : key=romano-pepper
red bell pepper
red pepper
roasted red pepper : key=roasted-red-pepper
romano pepper : proper=1 key=romano-pepper
shishito : key=shishito-pepper
shishito pepper : key=shishito-pepper
snacking pepper : key=mini-pepper
stuffing pepper
sweet pepper
sweet piquanté pepper
wax pepper : key=wax-pepper
yellow bell pepper
yellow pepper
@ FOOD noun group=vegetable kind=chilli
ají amarillo
anaheim chile : key=anaheim-pepper
anaheim pepper : proper=1 key=anaheim-pepper
ancho : key=ancho-chile
ancho chile = ancho chili : key=ancho-chile
ancho chilli : key=ancho-chile plural=chillies
ancho pepper : key=ancho-chile
bhut jolokia : key=ghost-pepper
bird's eye chile : key=birds-eye-chilli
bird's eye chili : plural=chilies key=birds-eye-chilli
bird's eye chilli : plural=chillies key=birds-eye-chilli
calabrian chile = calabrian chili : proper=1 key=calabrian-chile
calabrian chilli : key=calabrian-chile proper=1 plural=chillies
canned green chile : key=diced-green-chile
canned green chili : key=diced-green-chile
cascabel chile
cayenne chile
cayenne chilli : plural=chillies
cheongyang pepper : key=korean-chili-pepper
chile : key=chilli
chile de árbol : key=árbol-chile
chile pepper : key=chilli
chiles de arbol : key=árbol-chile
chili : plural=chilies key=chilli
chili pepper : key=chilli
chilli : plural=chillies key=chilli
chilli pepper : key=chilli
chipotle : key=chipotle
chipotle chile : key=chipotle
chipotle chile in adobo : mass key=chipotle-in-adobo
chipotle chiles in adobo : mass key=chipotle-in-adobo
chipotle chilli : key=chipotle plural=chillies
chipotle in adobo = chipotles in adobo : mass key=chipotle-in-adobo
chipotle pepper : key=chipotle
chipotle pepper in adobo : mass key=chipotle-in-adobo
chipotle peppers in adobo : mass key=chipotle-in-adobo
chipotle peppers in adobo sauce : mass key=chipotle-in-adobo
chipotles in adobo sauce : mass key=chipotle-in-adobo
chopped green chile : key=diced-green-chile
diced green chile = diced green chili : key=diced-green-chile
dried chile : key=dried-chilli
dried chili : plural=chilies key=dried-chilli
dried chilli : plural=chillies key=dried-chilli
dried red chile : key=dried-chilli
dried red chili : plural=chilies key=dried-chilli
dried red chilli : plural=chillies key=dried-chilli
finger chilli : plural=chillies
fresno chile = fresno chili : proper=1 key=fresno-chile
fresno pepper : key=fresno-chile
ghost pepper : key=ghost-pepper
green chile : key=green-chilli
green chili : plural=chilies key=green-chilli
green chili pepper : key=green-chilli
green chilli : plural=chillies key=green-chilli
green chilli pepper : key=green-chilli
guajillo : key=guajillo-chile
guajillo chile = guajillo chili : key=guajillo-chile
guajillo chilli : key=guajillo-chile plural=chillies
guajillo pepper : key=guajillo-chile
habanero : key=habanero
habanero chile : key=habanero
habanero chili : key=habanero
habanero pepper : key=habanero
hatch chile : key=hatch-chile
hatch green chile : key=hatch-chile
hot chili pepper
hot pepper : kind=pepper
jalapeno chile : key=jalapeño
jalapeño : key=jalapeño
jalapeño chilli : key=jalapeño plural=chillies
jalapeño pepper : key=jalapeño
kashmiri chili : plural=chilies proper=1
kashmiri chilli : plural=chillies proper=1
korean chili pepper : proper=1 key=korean-chili-pepper
long green chilli : plural=chillies
long red chilli : plural=chillies
mulato chile
naga chilli : key=ghost-pepper plural=chillies
new mexico chile : proper=2
pasilla : key=pasilla-chile
pasilla chile : key=pasilla-chile
pasilla chilli : key=pasilla-chile plural=chillies
pasilla pepper : key=pasilla-chile
peri-peri chilli : plural=chillies
pickled jalapeño
poblano : key=poblano
poblano chile : key=poblano
poblano pepper : key=poblano
puya chile
red chile : key=red-chilli
red chili : plural=chilies key=red-chilli
red chili pepper : key=red-chilli
red chilli : plural=chillies key=red-chilli
red chilli pepper : key=red-chilli
rocoto : key=rocoto-pepper
rocoto pepper : key=rocoto-pepper
scotch bonnet : proper=1 key=scotch-bonnet
scotch bonnet chilli : key=scotch-bonnet proper=1 plural=chillies
scotch bonnet pepper : key=scotch-bonnet proper=1
serrano : key=serrano-pepper
serrano chile : key=serrano-pepper
serrano chili : key=serrano-pepper
serrano pepper : key=serrano-pepper
thai chile : key=birds-eye-chilli proper=1
thai chili : plural=chilies key=birds-eye-chilli proper=1
thai chilli : plural=chillies key=birds-eye-chilli proper=1
árbol chile : key=árbol-chile
árbol chilli : key=árbol-chile plural=chillies

# Squashes, cucumbers, aubergines
@ FOOD noun group=vegetable kind=squash
acorn squash
aubergine : key=aubergine kind=aubergine
baby aubergine : key=baby-aubergine kind=aubergine
baby courgette : kind=courgette
baby cucumber : kind=cucumber key=mini-cucumber
baby eggplant : key=baby-aubergine kind=eggplant
baby zucchini : kind=zucchini
baingan : key=aubergine kind=aubergine
brinjal : key=aubergine kind=aubergine
butternut : key=butternut-squash
butternut squash : key=butternut-squash
canned pumpkin : mass kind=pumpkin key=pumpkin-purée
carnival squash
chayote : key=chayote kind=chayote
chayote squash : key=chayote kind=chayote
chinese eggplant : kind=eggplant proper=1
cho cho : key=chayote kind=chayote
choko : key=chayote kind=chayote
christophine = christophene : key=chayote kind=chayote
continental cucumber : kind=cucumber key=telegraph-cucumber
courgette : key=courgette kind=courgette
courgette flower : kind=blossom key=courgette-flower
crookneck squash : key=yellow-squash
crown prince squash
cucumber = cuke : kind=cucumber
delicata : key=delicata-squash
delicata squash : key=delicata-squash
dumpling squash
eggplant : key=aubergine kind=eggplant
english cucumber : kind=cucumber proper=1 key=english-cucumber
gem squash
graffiti eggplant : kind=eggplant
hokkaido squash : key=red-kuri-squash proper=1
hothouse cucumber : kind=cucumber key=english-cucumber
hubbard squash
italian eggplant : kind=eggplant proper=1
japanese aubergine : kind=eggplant key=japanese-eggplant proper=1
japanese cucumber : kind=cucumber proper=1
japanese eggplant : kind=eggplant proper=1 key=japanese-eggplant
kabocha : key=kabocha-squash
kabocha squash : key=kabocha-squash
kent pumpkin : kind=pumpkin proper=1
kirby cucumber : kind=cucumber proper=1 key=kirby-cucumber
lebanese cucumber : kind=cucumber proper=1
marrow : ambiguous kind=marrow
melongene : key=aubergine kind=aubergine
mini cucumber : kind=cucumber key=mini-cucumber
mirliton : key=chayote kind=chayote
onion squash : key=red-kuri-squash
patty pan : key=pattypan-squash
pattypan : key=pattypan-squash
pattypan squash : key=pattypan-squash
pea aubergine : kind=eggplant key=pea-eggplant
pea eggplant : kind=eggplant key=pea-eggplant
persian cucumber : kind=cucumber proper=1
pickling cucumber : kind=cucumber key=kirby-cucumber
pie pumpkin : kind=pumpkin key=sugar-pumpkin
pumpkin : kind=pumpkin
pumpkin purée : mass kind=pumpkin key=pumpkin-purée
queensland blue pumpkin : kind=pumpkin proper=1
red kuri : key=red-kuri-squash
red kuri squash : key=red-kuri-squash
round courgette : kind=courgette
scallopini squash : key=pattypan-squash
spaghetti squash
squash : ambiguous
squash blossom : kind=blossom key=courgette-flower
squash purée : mass
sugar pumpkin : kind=pumpkin key=sugar-pumpkin
summer squash
telegraph cucumber : kind=cucumber key=telegraph-cucumber
thai aubergine : kind=eggplant key=thai-eggplant proper=1
thai eggplant : kind=eggplant proper=1 key=thai-eggplant
tinned pumpkin : mass kind=pumpkin key=pumpkin-purée
turban squash
vegetable marrow : kind=marrow
winter squash
yellow squash : key=yellow-squash
yellow summer squash : key=yellow-squash
zucchini = zuke, zucchinis : key=courgette kind=zucchini
zucchini blossom : kind=blossom key=courgette-flower
zucchini flower : kind=blossom key=courgette-flower
@ FOOD noun group=vegetable
apple gourd : key=tinda
ash gourd : key=ash-gourd
bitter gourd : key=bitter-gourd
bitter melon : key=bitter-gourd
bottle gourd : key=bottle-gourd
calabash : key=bottle-gourd ambiguous
doodhi : key=bottle-gourd
dudhi : key=bottle-gourd
fuzzy melon : key=fuzzy-melon
hairy melon : key=fuzzy-melon
ivy gourd : key=ivy-gourd
karela : key=bitter-gourd
kundru : key=ivy-gourd
lauki : key=bottle-gourd
luffa : key=ridge-gourd
opo squash : key=bottle-gourd
parwal : key=pointed-gourd
petha : key=ash-gourd
pointed gourd : key=pointed-gourd
ridge gourd : key=ridge-gourd
snake gourd
tendli : key=ivy-gourd
tinda : key=tinda
tindora : key=ivy-gourd
turai : key=ridge-gourd
wax gourd : key=ash-gourd
winter melon : key=ash-gourd

# Peas, beans and maize in the pod or on the cob
@ FOOD noun group=vegetable
alfalfa : group=leaf-vegetable key=alfalfa-sprout
alfalfa sprout : group=leaf-vegetable key=alfalfa-sprout
baby corn : mass key=baby-corn
baby sweetcorn : mass key=baby-corn
bean sprout = beansprout
bhindi : mass key=okra
broad bean : key=broad-bean
broccoli sprout : group=leaf-vegetable
canned corn : mass key=sweetcorn
chinese long bean : key=long-bean proper=1
cluster bean : key=cluster-bean
corn : mass key=sweetcorn
corn cob = corncob : key=sweetcorn
corn husk
corn kernel = kernel corn : key=sweetcorn
corn on the cob : mass key=sweetcorn
cream style sweetcorn : mass key=creamed-corn
cream-style corn : mass key=creamed-corn
creamed corn : mass key=creamed-corn
double-podded broad bean : key=broad-bean
edamame = edamames : mass key=edamame
edamame bean : mass key=edamame
english pea : key=pea proper=1
fava : key=broad-bean
fava bean : key=broad-bean
favas : key=broad-bean
fine bean : key=green-bean
fine green bean : key=green-bean
flat bean : key=flat-bean
french bean : key=green-bean proper=1
frozen corn : mass key=sweetcorn
frozen mixed vegetable
frozen pea : key=pea
frozen sweetcorn : mass key=sweetcorn
garden pea : key=pea
green bean : key=green-bean
green pea : key=pea
guar : key=cluster-bean
haricot vert = haricots verts : key=green-bean
helda bean : key=flat-bean
hominy : mass group=grain key=hominy
huitlacoche : mass
hyacinth bean : key=hyacinth-bean
lady's finger : key=okra
lentil sprout
long bean : key=long-bean
mangetout = mange tout, mangetouts, mange touts : key=mangetout
marrowfat pea : group=legume
mote : mass group=grain key=hominy ambiguous
mung bean sprout
mushy peas : mass
okra : mass key=okra
papdi : key=hyacinth-bean
pea
pea shoot : group=leaf-vegetable key=pea-shoot
pea sprout : group=leaf-vegetable key=pea-shoot
pea tendril : group=leaf-vegetable key=pea-shoot
peas and carrots : mass
peas and sweetcorn : mass
petits pois = petit pois : mass key=pea
pozole corn : mass group=grain key=hominy
radish sprout : group=leaf-vegetable
romano bean : key=flat-bean
runner bean : key=runner-bean
snake bean : key=long-bean
snap bean : key=green-bean
snap pea : key=sugar-snap-pea
snow pea : key=mangetout
soybean sprout
string bean : key=green-bean
stringless bean : key=runner-bean
sugar snap : key=sugar-snap-pea
sugar snap pea : key=sugar-snap-pea
sugarsnap : key=sugar-snap-pea
sweetcorn = sweet corn : mass key=sweetcorn
sweetcorn kernel : key=sweetcorn
sweetcorn on the cob : mass key=sweetcorn
tinned corn : mass key=sweetcorn
tinned sweetcorn : mass key=sweetcorn
valor bean : key=hyacinth-bean
wax bean : key=wax-bean
whole kernel corn : key=sweetcorn
winged bean
yardlong bean : key=long-bean
yellow bean : key=wax-bean
yellow wax bean : key=wax-bean

# Brassicas that are not leaves, stalks, shoots
@ FOOD noun group=vegetable
artichoke
artichoke bottom
artichoke heart
asparagus : mass
asparagus spear : key=asparagus
asparagus tip
baby artichoke : kind=artichoke
baby broccoli : mass kind=broccoli key=tenderstem-broccoli
baby fennel : mass kind=fennel
bamboo shoot
banana blossom : key=banana-flower
banana flower : key=banana-flower
broccoli : mass
broccoli floret
broccoli head : key=floret
broccoli slaw : mass
broccoli stalk : key=broccoli-stem
broccoli stem : key=broccoli-stem
broccolini : mass
cactus leaf : key=cactus-paddle plural=leaves
cactus paddle : key=cactus-paddle
cardoon
cauliflower = cauli
cauliflower floret
cauliflower rice : mass key=cauliflower-rice
cauliflower steak : kind=cauliflower
celery : mass
celery heart
celery leaf : group=leaf-vegetable plural=leaves
chargrilled artichoke : key=marinated-artichoke
chinese celery : mass proper=1
coleslaw mix : mass key=coleslaw-mix
courgetti : key=spiralized-courgette
crudités : mass key=crudités
drumstick : ambiguous key=drumstick
drumstick pod
fennel : mass
fennel bulb : key=fennel
fiddlehead : key=fiddlehead
fiddlehead fern : key=fiddlehead
florence fennel : mass key=fennel proper=1
floret : key=floret
forced rhubarb : mass group=fruit kind=rhubarb
frozen veg : key=frozen-vegetable
frozen vegetable : key=frozen-vegetable
frozen veggie : key=frozen-vegetable
giardiniera : mass group=condiment
globe artichoke : key=artichoke
green asparagus : mass kind=asparagus
grilled artichoke heart : key=marinated-artichoke
heart of palm = hearts of palm, palm heart
kelp noodle : group=noodle
kohlrabi = kohl rabi
long-stem broccoli : mass kind=broccoli key=tenderstem-broccoli
lotus root : mass group=root-vegetable
marinated artichoke : key=marinated-artichoke
marinated artichoke heart : key=marinated-artichoke
marsh samphire : mass key=samphire
medley of vegetables : key=mixed-vegetable
mirepoix : mass
mixed veg : key=mixed-vegetable
mixed vegetable : key=mixed-vegetable
mixed veggie : key=mixed-vegetable
moringa pod : key=drumstick
nopal : key=cactus-paddle
nopales : key=cactus-paddle
prickly pear paddle : key=cactus-paddle
purple sprouting broccoli : mass kind=broccoli key=purple-sprouting-broccoli
rhubarb : mass group=fruit
riced cauliflower : mass key=cauliflower-rice
roast veg : key=roasted-vegetable
roasted veg : key=roasted-vegetable
roasted vegetable : key=roasted-vegetable
romanesco : key=romanesco
romanesco broccoli : key=romanesco
romanesco cauliflower : key=romanesco
root veg : group=root-vegetable key=root-vegetable
root vegetable : group=root-vegetable key=root-vegetable
root veggie : group=root-vegetable key=root-vegetable
salicornia : mass key=samphire
samphire : mass key=samphire
sea beans : mass key=samphire
slaw mix : mass key=coleslaw-mix
soffritto = soffrito : mass key=soffritto
sofrito base : mass key=soffritto
soup mix veg : mass key=soffritto
soup veg : key=soup-vegetable
soup vegetable : key=soup-vegetable
spiralized courgette : key=spiralized-courgette
sprouting broccoli : mass kind=broccoli key=purple-sprouting-broccoli
stir fry veg : key=stir-fry-vegetable
stir-fry mix : key=stir-fry-vegetable
stir-fry vegetable : key=stir-fry-vegetable
stir-fry veggie : key=stir-fry-vegetable
stuffed vine leaf : plural=leaves group=prepared
tenderstem broccoli : mass kind=broccoli key=tenderstem-broccoli
veg medley : key=mixed-vegetable
vegetable = veg, veggie, vegs
vegetable sticks : mass key=crudités
veggie sticks : mass key=crudités
water chestnut
white asparagus : mass kind=asparagus
zoodle : key=spiralized-courgette
zucchini noodle : key=spiralized-courgette

# Sea vegetables
@ FOOD noun mass group=vegetable kind=seaweed
aonori
arame
carrageen moss : key=irish-moss
dasima : key=kombu
dried kelp : key=kombu
dulse
gim : ambiguous key=gim
hijiki
irish moss : proper=1 key=irish-moss
kelp
kombu = konbu : key=kombu
laver : key=nori
laverbread
nori : key=nori
nori sheet = nori sheets : key=nori
roasted seaweed : key=nori
sea lettuce
sea moss : key=irish-moss
seaweed
seaweed salad
sushi nori : key=nori
toasted laver : key=gim
wakame

# Salad leaves
@ FOOD noun mass group=leaf-vegetable
arugula : key=rocket
asparagus lettuce : key=celtuce
baby arugula : key=rocket
baby gem : kind=lettuce key=little-gem-lettuce
baby gem lettuce : kind=lettuce key=little-gem-lettuce
bagged salad : key=mixed-leaves
batavia : key=escarole ambiguous
belgian endive : key=chicory proper=1
bibb lettuce : kind=lettuce key=butter-lettuce
boston lettuce : kind=lettuce key=butter-lettuce
butter lettuce : kind=lettuce key=butter-lettuce
butterhead : kind=lettuce key=butter-lettuce
butterhead lettuce : kind=lettuce key=butter-lettuce
celtuce : key=celtuce
chicory = chicories : key=chicory
corn salad : kind=lettuce key=lambs-lettuce
cos lettuce : key=cos-lettuce kind=lettuce
cress : ambiguous
curly endive : key=curly-endive
dandelion greens : key=dandelion-greens
dandelion leaf : key=dandelion-greens
dandelion leaves : key=dandelion-greens
endive : key=chicory
escarole : key=escarole
field greens : key=mesclun
frisee lettuce : key=curly-endive
frisée : key=curly-endive
garden cress : key=mustard-cress
gem lettuce : kind=lettuce key=little-gem-lettuce
green leaf lettuce : kind=lettuce key=green-leaf-lettuce
iceberg : kind=lettuce key=iceberg-lettuce
iceberg lettuce : kind=lettuce key=iceberg-lettuce
lamb's lettuce : kind=lettuce key=lambs-lettuce
leaf lettuce : kind=lettuce key=loose-leaf-lettuce
little gem : kind=lettuce key=little-gem-lettuce
little gem lettuce : kind=lettuce key=little-gem-lettuce
little gems : kind=lettuce key=little-gem-lettuce
lollo rossa : kind=lettuce key=lollo-rosso
lollo rosso : kind=lettuce key=lollo-rosso
loose-leaf lettuce : kind=lettuce key=loose-leaf-lettuce
mesclun : key=mesclun
micro greens = microgreens : key=micro-greens
microcress : key=micro-greens
mixed greens : key=mesclun
mixed leaves : key=mixed-leaves
mixed salad leaves : key=mixed-leaves
mizuna
mustard cress = mustard and cress : key=mustard-cress
mâche : kind=lettuce key=lambs-lettuce
nasturtium : key=nasturtium
nasturtium flowers : key=nasturtium
nasturtium leaves : key=nasturtium
oak leaf lettuce : kind=lettuce key=oak-leaf-lettuce
oakleaf : kind=lettuce key=oak-leaf-lettuce
puntarelle
purslane : key=purslane
radicchio
red chicory : key=chicory
red leaf lettuce : kind=lettuce key=green-leaf-lettuce
rocket : ambiguous key=rocket
romaine : key=cos-lettuce kind=lettuce
romaine lettuce : key=cos-lettuce kind=lettuce
round lettuce : kind=lettuce
salad cress : key=mustard-cress
salad greens
salad leaves : key=mixed-leaves
sorrel : ambiguous
spring greens mix : key=mesclun
spring mix : key=mesclun
tatsoi
treviso
verdolagas : key=purslane
watercress
white chicory : key=chicory
wild rocket : key=rocket
witloof : key=chicory
wosun : key=celtuce
@ FOOD noun group=leaf-vegetable
heart of romaine = hearts of romaine, romaine heart : key=cos-lettuce kind=lettuce
lettuce
lettuce cup : key=lettuce
lettuce leaf : key=lettuce plural=leaves

# Leaves for the pan
@ FOOD noun mass group=leaf-vegetable
amaranth greens : key=callaloo
amaranth leaves : key=callaloo
baby bok choy : key=pak-choi
baby kale : kind=kale
baby pak choi : key=pak-choi
baby spinach : kind=spinach
beet greens : key=beet-greens
beet tops
beetroot leaves : key=beet-greens
bitterleaf = bitter leaf
black cabbage : key=cavolo-nero kind=kale
black kale : key=cavolo-nero kind=kale
bok choy = bok choi : key=pak-choi
bok choys : key=pak-choi
braising greens
broccoli raab : key=broccoli-rabe
broccoli rabe : key=broccoli-rabe
callaloo : key=callaloo
cassava leaves
cavolo nero : key=cavolo-nero kind=kale
chard : ambiguous
chaulai : key=callaloo
chinese broccoli : key=chinese-broccoli proper=1
choy sum = choi sum : key=choy-sum
chrysanthemum greens : key=shungiku
cime di rapa : key=broccoli-rabe
collard : key=collard-greens
collard greens : key=collard-greens
collards : key=collard-greens
curly kale : kind=kale
dasheen leaves : key=taro-leaves
dino kale : key=cavolo-nero kind=kale
drumstick leaves : key=moringa
efo shoko
ewedu : key=jute-leaves
fenugreek leaves : group=herb key=fenugreek-leaves
fresh methi : group=herb key=fenugreek-leaves
frozen chopped spinach : kind=spinach key=frozen-spinach
frozen leaf spinach : kind=spinach key=frozen-spinach
frozen spinach : kind=spinach key=frozen-spinach
gai choy : key=mustard-greens
gai lan = kai lan : key=chinese-broccoli
greens : ambiguous
jute leaves : key=jute-leaves
kale
kale leaves : key=kale
kang kong : key=water-spinach
kangkong : key=water-spinach
lacinato kale : key=cavolo-nero kind=kale
leaf spinach : kind=spinach
luau leaves : key=taro-leaves
malabar spinach : proper=1 key=malabar-spinach
methi greens : group=herb key=fenugreek-leaves
methi leaves : group=herb key=fenugreek-leaves
molokhia : key=jute-leaves
moringa : key=moringa
moringa leaves : key=moringa
morning glory : key=water-spinach
mulukhiyah : key=jute-leaves
mustard greens : key=mustard-greens
mustard leaves : key=mustard-greens
nettle tops : key=nettles
nettles = nettle : key=nettles
new zealand spinach : proper=2 key=new-zealand-spinach
ong choy : key=water-spinach
pak choi = pak choy : key=pak-choi
pak choys : key=pak-choi
poi saag : key=malabar-spinach
radish leaves
rainbow chard : kind=chard key=rainbow-chard
rapini : key=broccoli-rabe
red russian kale : kind=kale
ruby chard : kind=chard key=rainbow-chard
saag
sarson : key=mustard-greens
sea kale
shanghai greens : key=pak-choi
shungiku : key=shungiku
silver beet : kind=chard key=swiss-chard
silverbeet : kind=chard key=swiss-chard
spinach
spinach leaves : key=spinach
spring greens
stinging nettles : key=nettles
stir-fry greens
sweet potato leaves
swiss chard : kind=chard proper=1 key=swiss-chard
taro leaves : key=taro-leaves
tong ho : key=shungiku
turnip greens : key=turnip-greens
turnip tops : key=turnip-greens
tuscan kale : key=cavolo-nero kind=kale proper=1
ugu
warrigal greens : key=new-zealand-spinach
water spinach : key=water-spinach
you choy : key=choy-sum
yu choy : key=choy-sum
@ FOOD noun group=leaf-vegetable
banana leaf : plural=leaves
betel leaf : plural=leaves
brussels sprout = brussel sprout : proper=1
cabbage
cabbage leaf : kind=cabbage plural=leaves
celery top
chinese cabbage : key=napa-cabbage kind=cabbage proper=1
chinese leaf : plural=leaves key=napa-cabbage kind=cabbage proper=1
conehead cabbage : kind=cabbage
flower sprout : key=kalette
grape leaf : key=vine-leaf plural=leaves
green cabbage : kind=cabbage
hispi : kind=cabbage key=pointed-cabbage
hispi cabbage : kind=cabbage key=pointed-cabbage
january king cabbage : kind=cabbage proper=2
kalette : key=kalette
lotus leaf : plural=leaves
napa cabbage = nappa cabbage : key=napa-cabbage kind=cabbage
pandan leaf : group=herb plural=leaves
perilla leaf : key=perilla plural=leaves
pointed cabbage : kind=cabbage key=pointed-cabbage
red cabbage : kind=cabbage
savoy : kind=cabbage key=savoy-cabbage
savoy cabbage : kind=cabbage key=savoy-cabbage
sesame leaf : key=perilla plural=leaves
shiso leaf : key=shiso plural=leaves
sprout : ambiguous key=brussels-sprout
sweetheart cabbage : kind=cabbage key=pointed-cabbage
vine leaf : key=vine-leaf plural=leaves
white cabbage : kind=cabbage
wombok : key=napa-cabbage kind=cabbage

# Roots and tubers
@ FOOD noun group=root-vegetable kind=potato
agria potato : proper=1
baby new potato : key=baby-potato
baby potato : key=baby-potato
baking potato
canned potato : key=tinned-potato
charlotte potato : proper=1
chipping potato
creamer potato
desiree potato : proper=1
diced hash brown potato : key=frozen-diced-potato
diced potato : key=frozen-diced-potato
fingerling : key=fingerling-potato
fingerling potato : key=fingerling-potato
floury potato
frozen diced potato : key=frozen-diced-potato
gold potato : key=yellow-potato
idaho potato : key=russet-potato
jersey royal : proper=1 key=jersey-royal
jersey royal potato : key=jersey-royal proper=1
kestrel potato : proper=1
king edward : key=king-edward-potato
king edward potato : proper=2 key=king-edward-potato
kipfler : key=kipfler-potato
kipfler potato : key=kipfler-potato
maris peer potato : proper=2
maris piper : key=maris-piper-potato
maris piper potato : proper=2 key=maris-piper-potato
mashed potato = mash potato : group=prepared
new potato
old potato
potato = spud, tater, tattie
potato peel : key=potato-peel
potato skin : key=potato-peel
purple potato
red bliss potato : key=red-potato
red potato : key=red-potato
red-skinned potato : key=red-potato
roastie
russet : key=russet-potato
russet potato : key=russet-potato
russets : key=russet-potato
salad potato
sebago potato : proper=1
tinned potato : key=tinned-potato
waxy potato
white potato
yellow potato : key=yellow-potato
yukon gold : key=yukon-gold-potato
yukon gold potato : proper=2 key=yukon-gold-potato
@ FOOD noun group=root-vegetable
arrowhead root
baby beet : kind=beet key=baby-beetroot
baby beetroot : kind=beet key=baby-beetroot
baby carrot : kind=carrot
baby ginger : mass group=spice kind=ginger key=young-ginger
baby parsnip : kind=parsnip
baby turnip : kind=turnip
beet : key=beetroot kind=beet
beetroot : key=beetroot kind=beetroot
black radish : kind=radish
breakfast radish : kind=radish key=breakfast-radish
bunched carrot : kind=carrot
burdock : mass key=burdock-root
burdock root : mass key=burdock-root
candied yam : kind=yam
candy beet : kind=beet key=candy-beetroot
candy beetroot : kind=beet key=candy-beetroot
candy cane beet : kind=beet key=candy-beetroot
canned beet : kind=beetroot key=pickled-beetroot
carrot
carrot greens : group=leaf-vegetable key=carrot-top
carrot top : group=leaf-vegetable key=carrot-top
cassava : mass
celeriac : mass key=celeriac
celery root : mass key=celeriac
chantenay carrot : kind=carrot proper=1
chinese artichoke : proper=1 key=chinese-artichoke
chinese yam : proper=1 key=chinese-yam
chioggia beet : kind=beet key=candy-beetroot
cocoyam : key=dasheen
cooked beetroot : kind=beetroot key=cooked-beetroot
crosne : key=chinese-artichoke
daikon : key=daikon kind=radish
daikon radish : key=daikon kind=radish
dasheen : key=dasheen
dutch carrot : kind=carrot proper=1
eddo = eddoe
elephant foot yam : key=elephant-foot-yam
french breakfast radish : kind=radish key=breakfast-radish proper=1
fresh ginger : mass key=ginger group=spice kind=ginger
fresh turmeric : mass group=spice kind=turmeric key=fresh-turmeric
galangal = galingale : mass group=spice key=galangal
ginger root = gingerroot, root ginger : mass key=ginger group=spice kind=ginger
gobo : mass key=burdock-root
golden beet : key=golden-beetroot kind=beet
golden beetroot : key=golden-beetroot kind=beetroot
hamburg parsley : mass key=parsley-root
heirloom carrot : kind=carrot key=heritage-carrot
heritage carrot : kind=carrot key=heritage-carrot
horseradish root : group=root-vegetable
japanese sweet potato : kind=sweet-potato proper=1 key=japanese-sweet-potato
jerusalem artichoke : proper=1 key=jerusalem-artichoke
jicama : key=jicama
kumara : key=sweet-potato
laos root : mass group=spice key=galangal
lengkuas : mass group=spice key=galangal
lobak : key=daikon kind=radish
malanga : key=dasheen
manioc : mass key=cassava
mexican turnip : key=jicama proper=1
mooli : key=daikon kind=radish
mountain yam : key=chinese-yam
nagaimo : key=chinese-yam
neep : key=swede
new zealand yam : key=oca
oca : ambiguous key=oca
orange sweet potato : key=sweet-potato
oyster plant : mass key=salsify
parsley root : mass key=parsley-root
parsnip
pickled beet : kind=beetroot key=pickled-beetroot
pickled beetroot : kind=beetroot key=pickled-beetroot
puna yam : kind=yam key=white-yam
purple carrot : kind=carrot
purple sweet potato : kind=sweet-potato key=purple-sweet-potato
purple yam : kind=sweet-potato key=purple-sweet-potato
radish
rainbow carrot : kind=carrot key=heritage-carrot
rutabaga : key=swede
salsify : mass key=salsify
satsumaimo : kind=sweet-potato key=japanese-sweet-potato
scorzonera : mass key=salsify
sunchoke : key=jerusalem-artichoke
suran : key=elephant-foot-yam ambiguous
swede : key=swede
sweet potato : key=sweet-potato
taro : mass
tinned beetroot : kind=beetroot key=pickled-beetroot
turmeric root : mass group=spice kind=turmeric key=fresh-turmeric
turnip
ube : kind=sweet-potato key=purple-sweet-potato
vac-packed beetroot : kind=beetroot key=cooked-beetroot
vacuum-packed beetroot : kind=beetroot key=cooked-beetroot
wasabi root : mass group=spice
watermelon radish : kind=radish
white radish : key=daikon kind=radish
white yam : kind=yam key=white-yam
yam
yam bean : key=jicama
yautia : key=dasheen
yellow turnip : key=swede
young ginger : mass group=spice kind=ginger key=young-ginger
yuca : mass key=cassava

# Mushrooms
@ FOOD noun group=mushroom kind=mushroom
baby bella : key=cremini-mushroom
baby bella mushroom : key=cremini-mushroom
beech mushroom : key=shimeji-mushroom
black fungus : key=wood-ear-mushroom
black truffle : kind=truffle
black trumpet mushroom : key=trompette-mushroom
blewit
brown beech mushroom : key=shimeji-mushroom
brown mushroom : key=cremini-mushroom
button mushroom
canned mushroom : key=canned-mushroom
cep : key=porcini-mushroom
chanterelle : key=chanterelle
chanterelle mushroom : key=chanterelle
chestnut mushroom : key=cremini-mushroom
chicken of the woods
chinese black mushroom : key=dried-shiitake-mushroom proper=1
closed-cup mushroom : key=closed-cup-mushroom
cloud ear : key=wood-ear-mushroom
cremini : key=cremini-mushroom
cremini mushroom = crimini mushroom : key=cremini-mushroom
crimini : key=cremini-mushroom
cup mushroom : key=closed-cup-mushroom
dried cep : key=dried-porcini-mushroom
dried chinese mushroom : key=dried-shiitake-mushroom
dried morel
dried mushroom : key=dried-mushroom
dried porcini : key=dried-porcini-mushroom
dried porcini mushroom = dried porcini mushrooms : key=dried-porcini-mushroom
dried shiitake : key=dried-shiitake-mushroom
dried shiitake mushroom : key=dried-shiitake-mushroom
dried wild mushroom : key=dried-mushroom
dried wood ear : key=wood-ear-mushroom
duxelles : mass key=mushroom-duxelles
enoki : key=enoki-mushroom
enoki mushroom : key=enoki-mushroom
enokitake : key=enoki-mushroom
eryngii : key=king-oyster-mushroom
exotic mushroom
field mushroom : key=flat-mushroom
flat mushroom : key=flat-mushroom
fresh porcini : key=porcini-mushroom
giant puffball : key=puffball-mushroom
girolle : key=chanterelle
girolle mushroom : key=chanterelle
hen of the woods : key=maitake-mushroom
horn of plenty : key=trompette-mushroom
jarred mushroom : key=canned-mushroom
king oyster : key=king-oyster-mushroom
king oyster mushroom : key=king-oyster-mushroom
king trumpet mushroom : key=king-oyster-mushroom
large flat mushroom : key=flat-mushroom
lion's mane : key=lions-mane-mushroom
lion's mane mushroom : key=lions-mane-mushroom
maitake : key=maitake-mushroom
maitake mushroom : key=maitake-mushroom
matsutake : key=pine-mushroom
mixed mushroom
morel : key=morel
morel mushroom : key=morel
mushroom = mushie, shroom
mushroom cap
mushroom duxelles : mass key=mushroom-duxelles
mushroom powder : mass group=spice key=mushroom-powder
mushroom stalk : key=mushroom-stem
mushroom stem : key=mushroom-stem
nameko : key=nameko-mushroom
nameko mushroom : key=nameko-mushroom
oyster mush : key=oyster-mushroom
oyster mushroom : key=oyster-mushroom
pine mushroom : key=pine-mushroom
porcini : key=porcini-mushroom
porcini mushroom : key=porcini-mushroom
porcini powder : mass group=spice key=mushroom-powder
porcino : key=porcini-mushroom
portabella : key=portobello-mushroom
portobellini : key=portobellini-mushroom
portobellini mushroom : key=portobellini-mushroom
portobello : key=portobello-mushroom
portobello mushroom = portabella mushroom, portabello mushroom : key=portobello-mushroom
puffball : key=puffball-mushroom
puffball mushroom : key=puffball-mushroom
shiitake : key=shiitake-mushroom
shiitake mushroom = shitake mushroom : key=shiitake-mushroom
shiitakes : key=shiitake-mushroom
shimeji : key=shimeji-mushroom
shimeji mushroom : key=shimeji-mushroom
silver ear : key=white-fungus
snow fungus : key=white-fungus
straw mushroom
summer truffle : kind=truffle
swiss brown mushroom : key=cremini-mushroom proper=1
tinned mushroom : key=canned-mushroom
trompette mushroom : key=trompette-mushroom
truffle : ambiguous
white fungus : key=white-fungus
white mushroom
white truffle : kind=truffle
wild mushroom
wood ear : key=wood-ear-mushroom
wood ear fungus : key=wood-ear-mushroom
wood ear mushroom : key=wood-ear-mushroom

# Words that are another food too
@ FOOD noun group=vegetable kind=pepper
capsicum pepper : key=bell-pepper
pepper : key=bell-pepper
@ FOOD noun group=vegetable
artichoke leaf : plural=leaves
baby veg : key=baby-vegetable
baby vegetable : key=baby-vegetable
bathua : mass group=leaf-vegetable key=lambs-quarters
broccoflower
buttercup squash : kind=squash
chop suey greens : mass group=leaf-vegetable
cocozelle : kind=zucchini
comfrey : mass group=leaf-vegetable
crookneck : kind=squash
dandelion : ambiguous mass group=leaf-vegetable
fat hen : mass group=leaf-vegetable key=lambs-quarters
garden sorrel : mass group=leaf-vegetable key=mountain-spinach
horse bean
husk tomato : kind=tomatillo
lamb's quarters = lamb's-quarter : mass group=leaf-vegetable key=lambs-quarters
leaf beet : mass group=leaf-vegetable key=mountain-spinach
lettuce head = head lettuce : group=leaf-vegetable kind=lettuce
maize : mass key=sweetcorn
mangel : group=root-vegetable key=mangel-wurzel
mangel-wurzel : group=root-vegetable key=mangel-wurzel
mexican squash : kind=squash proper=1
mountain spinach : mass group=leaf-vegetable key=mountain-spinach
orache : mass group=leaf-vegetable key=mountain-spinach
perpetual spinach : mass group=leaf-vegetable key=mountain-spinach
pigweed : mass group=leaf-vegetable key=lambs-quarters
purple onion : kind=onion key=red-onion
sea vegetable
snow pea sprout : group=leaf-vegetable
spinach beet : mass group=leaf-vegetable key=mountain-spinach
sugar beet : group=root-vegetable
tomato half : kind=tomato plural=halves
tomato wedge : kind=tomato
wheatgrass : mass group=leaf-vegetable
whole garlic : mass kind=garlic key=garlic
