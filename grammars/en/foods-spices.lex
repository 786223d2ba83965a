# Herbs, spices, blends, salt, pepper, leavening, yeast, setting agents, extracts.

# Herbs, fresh or dried by the word before them
@ FOOD noun mass group=herb
angelica
basil
basil leaves = basil leaf : key=basil
bergamot leaves
borage
bouquet garni = bouquet garnis
calendula : key=marigold-petals
candied violets : key=violets
chadon beni : key=culantro
chamomile = camomile : key=chamomile
chamomile flowers : key=chamomile
chervil
chocolate mint : kind=mint
cilantro : key=coriander
cilantro leaf : key=coriander
cilantro leaves : key=coriander
cilantro stem : key=coriander-stalks
cilantro stems : key=coriander-stalks
continental parsley : kind=parsley key=flat-leaf-parsley
coriander : key=coriander
coriander leaf : key=coriander
coriander leaves : key=coriander
coriander root = coriander roots
coriander stalks = coriander stalk : key=coriander-stalks
coriander stem : key=coriander-stalks
coriander stems : key=coriander-stalks
cornflower petals
crystallised violets : key=violets
culantro : key=culantro
culinary lavender : key=lavender
curly parsley : kind=parsley key=curly-parsley
curly-leaf parsley : kind=parsley key=curly-parsley
curry plant
dhania : key=coriander
dill : key=dill
dill frond : key=dill
dill fronds : key=dill
dill weed = dillweed : key=dill
dried dill : key=dill
dried herbs = dried herb
dried hibiscus : key=hibiscus
dried lavender : key=lavender
dried mint : kind=mint
dried mixed herbs : key=mixed-herbs
dried oregano : kind=oregano
dried rose petal : key=rose-petals
dried rose petals : key=rose-petals
dried rosemary : kind=rosemary
dried sage : kind=sage key=dried-sage
dried thyme : kind=thyme
edible flowers = edible flower
edible lavender : key=lavender
elderflower = elderflowers
epazote
fennel fronds = fennel frond : key=fennel-fronds
fennel tops : key=fennel-fronds
fines herbes
flat parsley : kind=parsley key=flat-leaf-parsley
flat-leaf parsley : kind=parsley key=flat-leaf-parsley
french tarragon : key=tarragon proper=1
fresh coriander : key=coriander
fresh dill : key=dill
fresh herbs = fresh herb : key=herb
garden mint : key=mint
greek basil : kind=basil proper=1
greek oregano : kind=oregano proper=1
ground sage : kind=sage key=dried-sage
herb = herbs : key=herb
herbes de provence = herbs de provence : key=herbes-de-provence
hibiscus : key=hibiscus
hibiscus flower : key=hibiscus
hibiscus flowers : key=hibiscus
hoja santa
holy basil : kind=basil key=holy-basil
hyssop
italian herb mix : key=italian-seasoning proper=1
italian herb seasoning : key=italian-seasoning proper=1
italian herbs = italian herb : key=italian-seasoning proper=1
italian parsley : kind=parsley key=flat-leaf-parsley proper=1
italian seasoning : key=italian-seasoning proper=1
jamaica flowers : key=hibiscus
kinome : key=sansho-leaves
laksa leaves : key=vietnamese-mint
lavender
lavender buds : key=lavender
lavender flowers = lavender flower : key=lavender
lemon balm
lemon basil : kind=basil
lemon myrtle
lemon thyme : kind=thyme
lemon verbena
lovage
marigold petals : key=marigold-petals
marjoram
mexican oregano : kind=oregano proper=1
mint : ambiguous
mint in vinegar : group=sauce key=mint-sauce
mint leaves = mint leaf : key=mint
mint sauce : group=sauce key=mint-sauce
mitsuba
mixed herbs = mixed herb : key=mixed-herbs
oregano
oregano leaves : key=oregano
papalo
parsley
parsley leaves = parsley leaf : key=parsley
parsley stalks = parsley stalk : key=parsley-stalks
parsley stem : key=parsley-stalks
parsley stems : key=parsley-stalks
peppermint : kind=mint
perilla : key=shiso
perilla leaves : key=shiso
provençal herbs : key=herbes-de-provence
purple basil : kind=basil
rau ram : key=vietnamese-mint
recao : key=culantro
rice paddy herb
rose petals = rose petal : key=rose-petals
rosemary
rosemary leaves : key=rosemary
rosemary needles = rosemary needle : key=rosemary
rubbed sage : kind=sage key=dried-sage
sage : ambiguous
sage leaves = sage leaf : key=sage
salad burnet
sansho leaves : key=sansho-leaves
savory : ambiguous
sawtooth coriander : key=culantro
shado beni : key=culantro
shiso : key=shiso
shiso leaves : key=shiso
soft herb : key=herb
soft herbs : key=herb
sorrel flowers : key=hibiscus
spearmint : kind=mint
summer savory
sweet basil : key=basil
sweet cicely
sweet marjoram : key=marjoram
tarragon
tarragon leaves : key=tarragon
thai basil : kind=basil proper=1
thai basil leaves = thai basil leaf : key=thai-basil proper=1
thai holy basil : kind=basil key=holy-basil proper=1
thyme
thyme leaves = thyme leaf : key=thyme
tulsi : kind=basil key=holy-basil
vietnamese coriander : key=vietnamese-mint proper=1
vietnamese mint : proper=1 key=vietnamese-mint
violets : ambiguous key=violets
winter savory
woody herbs : key=herb
@ FOOD noun group=herb
avocado leaf : plural=leaves
bay : mass ambiguous key=bay-leaf
bay leaf : plural=leaves key=bay-leaf
chinese chive : key=garlic-chive proper=1
chive
chive blossom : key=chive-blossom
chive flower : key=chive-blossom
curry leaf : plural=leaves
dried bay leaf : plural=leaves key=bay-leaf
dried curry leaf : plural=leaves key=curry-leaf
dried fenugreek : mass key=kasuri-methi
dried fenugreek leaf : mass key=kasuri-methi
dried fenugreek leaves : mass key=kasuri-methi
dried methi : mass key=kasuri-methi
fig leaf : plural=leaves
flowering chive : key=garlic-chive
fresh bay leaf : plural=leaves key=bay-leaf
garlic chive : key=garlic-chive
indian bay leaf : plural=leaves proper=1
kaffir lime leaf : plural=leaves key=lime-leaf
kasuri methi = kasoori methi : mass key=kasuri-methi
lemongrass = lemon grass : mass
lemongrass stalk : key=lemongrass
lime leaf : plural=leaves
makrut lime leaf : plural=leaves key=lime-leaf
methi : mass
nira : key=garlic-chive ambiguous
pandan = pandanus : mass key=pandan
salam leaf : plural=leaves
screwpine leaf : mass key=pandan
tej patta : mass key=indian-bay-leaf

# Salt
@ FOOD noun mass group=salt free
black salt : key=kala-namak
canning salt : key=pickling-salt
coarse salt
coarse sea salt
cooking salt
fine salt
fine sea salt
finishing salt : key=sea-salt-flakes
flake salt : key=sea-salt-flakes
flaked sea salt : key=sea-salt-flakes
flaky salt = flakey salt : key=sea-salt-flakes
flaky sea salt : key=sea-salt-flakes
fleur de sel
grey salt = gray salt : key=grey-salt
himalayan pink salt : key=pink-salt proper=1
himalayan salt : key=pink-salt proper=1
iodised salt : key=table-salt
iodized salt : key=table-salt
kala namak : key=kala-namak
kosher salt
low-sodium salt : key=low-sodium-salt
pickling salt : key=pickling-salt
pink himalayan salt : key=pink-salt
pink salt : key=pink-salt
rock salt
salt
salt flakes : key=sea-salt-flakes
salt substitute : key=low-sodium-salt
sea salt
sea salt flakes : key=sea-salt-flakes
sel gris : key=grey-salt
smoked salt : key=smoked-salt
smoked sea salt : key=smoked-salt
table salt : key=table-salt
@ FOOD noun mass group=salt
celery salt
chicken salt
curing salt : key=curing-salt
garlic salt
herb salt
margarita salt
monosodium glutamate = msg
nitrite curing salt : key=curing-salt
onion salt
pink curing salt : key=curing-salt
popcorn salt
prague powder : key=curing-salt
seasoned salt : key=seasoned-salt
seasoning salt : key=seasoned-salt
truffle salt
vanilla salt
vegetable salt

# Pepper
@ FOOD noun mass group=pepper free
black pepper
cracked black pepper : key=black-pepper
cracked pepper : key=pepper
fresh ground pepper : key=black-pepper
freshly cracked black pepper : key=black-pepper
freshly cracked pepper : key=pepper
freshly ground black pepper : key=black-pepper
freshly ground pepper : key=pepper
green pepper powder
ground black pepper : key=black-pepper
ground pepper : key=pepper
ground white pepper : key=white-pepper
mixed pepper
pepper
pink pepper
white pepper : key=white-pepper
@ FOOD noun group=pepper
alligator pepper : mass group=spice key=grains-of-paradise
black peppercorn
brined green peppercorn : key=green-peppercorn
cubeb : group=spice key=cubeb-pepper
cubeb pepper : group=spice key=cubeb-pepper
garlic pepper : mass group=spice key=garlic-pepper
garlic pepper seasoning : mass group=spice key=garlic-pepper
grains of paradise : mass group=spice key=grains-of-paradise
green peppercorn : key=green-peppercorn
green peppercorns in brine : key=green-peppercorn
lemon pepper : mass group=spice key=lemon-pepper
lemon pepper seasoning : mass group=spice key=lemon-pepper
long pepper : mass
melegueta pepper : mass group=spice key=grains-of-paradise
mixed peppercorn
pepper powder : mass key=black-pepper
peppercorn
pink peppercorn
sansho : mass group=spice key=sansho-pepper
sansho pepper : mass group=spice key=sansho-pepper
sichuan pepper : group=spice key=sichuan-peppercorn proper=1
sichuan peppercorn : group=spice proper=1 key=sichuan-peppercorn
szechuan pepper : group=spice key=sichuan-peppercorn proper=1
szechuan peppercorn : group=spice key=sichuan-peppercorn proper=1
timur pepper : mass group=spice proper=1
white peppercorn

# Spices
@ FOOD noun mass group=spice
5 spice : key=five-spice-powder
5 spice powder : key=five-spice-powder
achiote : key=annatto
achiote seed : key=annatto-seeds
achiote seeds : key=annatto-seeds
activated charcoal : key=activated-charcoal
adobo powder : key=adobo-seasoning
adobo seasoning : key=adobo-seasoning
advieh
ajwain : key=ajwain
ajwain seed : key=ajwain
ajwain seeds : key=ajwain
aleppo chilli flakes : key=aleppo-pepper proper=1
aleppo pepper : proper=1 key=aleppo-pepper
aleppo pepper flakes : key=aleppo-pepper proper=1
all-purpose adobo : key=adobo-seasoning
all-purpose seasoning
allspice = all spice : key=allspice
allspice berries = allspice berry : kind=allspice key=allspice-berries
amba powder
amchoor = amchur : key=amchoor
amchoor powder : key=amchoor
anardana : key=anardana
ancho chile powder = ancho chili powder : key=ancho-chile-powder
ancho powder : key=ancho-chile-powder
anise : key=anise-seed
anise seed = anise seeds : key=anise-seed
aniseed : key=anise-seed
aniseeds : key=anise-seed
annatto : key=annatto
annatto powder : key=annatto
annatto seeds = annatto seed : key=annatto-seeds
apple pie spice
arabic mixed spice : key=baharat
asafoetida = asafetida : key=asafoetida
asafoetida powder : key=asafoetida
badi elaichi : key=black-cardamom
bagel seasoning : key=everything-bagel-seasoning
baharat : key=baharat
bamboo charcoal : key=activated-charcoal
barbecue rub : key=barbecue-rub
barbecue seasoning : key=barbecue-rub
barbecue spice : key=barbecue-rub
bbq rub : key=barbecue-rub
bbq seasoning : key=barbecue-rub
beetroot powder
bengali five-spice : key=panch-phoron
berbere : key=berbere
berbere spice : key=berbere
berbere spice mix : key=berbere
biryani masala : key=biryani-masala
biryani spice mix : key=biryani-masala
black cardamom = black cardamoms : key=black-cardamom
black cumin : key=black-cumin
black cumin seeds : key=black-cumin
black lime powder
black mustard seeds = black mustard seed : kind=mustard key=black-mustard-seeds
black onion seeds : key=nigella-seeds
black seed : key=nigella-seeds
black stone flower : key=black-stone-flower
blackened seasoning : key=cajun-seasoning
blackening seasoning : key=cajun-seasoning
blue poppy seeds : key=poppy-seeds
brown cardamom : key=black-cardamom
brown mustard seed : kind=mustard key=black-mustard-seeds
brown mustard seeds : kind=mustard key=black-mustard-seeds
burger seasoning
cajun seasoning : proper=1 key=cajun-seasoning
cajun spice : key=cajun-seasoning proper=1
cajun spice mix : key=cajun-seasoning proper=1
cajun spices : key=cajun-seasoning proper=1
calabash nutmeg : key=ground-ehuru
caraway : key=caraway-seeds
caraway powder : key=caraway-powder
caraway seeds = caraway seed : key=caraway-seeds
cardamom = cardamon, cardamoms : key=cardamom
cardamom powder : key=cardamom
cardamom seeds = cardamom seed
carom : key=ajwain
carom seed : key=ajwain
carom seeds : key=ajwain
cassia : key=cassia-bark
cassia bark : key=cassia-bark
cayenne : key=cayenne-pepper
cayenne chilli powder : key=cayenne-pepper
cayenne pepper : key=cayenne-pepper
cayenne powder : key=cayenne-pepper
celery seeds = celery seed
ceylon cinnamon : kind=cinnamon proper=1
chaat masala = chat masala
chai masala : key=chai-masala
chai spice : key=chai-masala
chana masala powder : key=chana-masala-powder
chana masala spice : key=chana-masala-powder
charcoal powder : key=activated-charcoal
cheese powder : group=cheese
chesapeake seasoning : key=seafood-seasoning
chicken masala : key=meat-masala
chicken seasoning
chile flakes : key=chilli-flakes
chile powder : key=chilli-powder
chili flakes = chili flake : key=chilli-flakes
chili mix : key=chili-seasoning
chili powder : key=chili-powder
chili seasoning : key=chili-seasoning
chili seasoning mix : key=chili-seasoning
chilli con carne mix : key=chili-seasoning
chilli flakes = chilli flake : key=chilli-flakes
chilli powder : key=chilli-powder
chilli-lime seasoning = chili-lime seasoning
chinese five-spice : key=five-spice-powder proper=1
chinese five-spice powder : key=five-spice-powder proper=1
chipotle chile powder : key=chipotle-powder
chipotle chili powder : key=chipotle-powder
chipotle powder : key=chipotle-powder
chole masala : key=chana-masala-powder
cinnamon : key=cinnamon
cinnamon powder : key=cinnamon
clove powder : key=cloves
cloves = clove : key=cloves
coriander powder : key=ground-coriander
coriander seeds = coriander seed : key=coriander-seed
crab boil : key=seafood-seasoning
crayfish powder : group=shellfish key=ground-crayfish
creole seasoning : proper=1
crushed chilli : key=chilli-flakes
crushed chillies : key=chilli-flakes
crushed dried chillies : key=chilli-flakes
crushed red chili flakes : key=chilli-flakes
crushed red pepper : key=chilli-flakes
crushed red pepper flakes : key=chilli-flakes
cumin : key=cumin
cumin powder : key=cumin
cumin seeds = cumin seed : key=cumin-seed
cumin seeds whole : key=cumin-seed
curry masala
curry powder : key=curry-powder
curry seasoning
dagad phool : key=black-stone-flower
dashi granules : group=stock key=dashi-powder
dashi powder : group=stock key=dashi-powder
dehydrated garlic : key=garlic-flakes
dehydrated onion : key=onion-flakes
dhania powder : key=ground-coriander
dhania seeds : key=coriander-seed
dill seed = dill seeds
dried chili flakes : key=chilli-flakes
dried chilli flakes : key=chilli-flakes
dried garlic : key=garlic-flakes
dried ginger : kind=ginger key=ground-ginger
dried mango powder : key=amchoor
dried minced garlic : key=garlic-flakes
dried minced onion : key=onion-flakes
dried mustard : key=mustard-powder
dried onion : key=onion-flakes
dried onion flakes : key=onion-flakes
dried pomegranate seeds : key=anardana
dried red pepper flakes : key=chilli-flakes
dried shrimp powder : group=shellfish key=shrimp-powder
dried spices : key=spice
dry english mustard : key=mustard-powder
dry ginger powder : kind=ginger key=ground-ginger
dry jerk seasoning : key=jerk-seasoning
dry mango powder : key=amchoor
dry mustard : key=mustard-powder
dry ranch dressing mix : key=ranch-seasoning
dry ranch mix : key=ranch-seasoning
dry rub : key=barbecue-rub
dukkah = dukka : group=seed
duqqa
ehuru : key=ground-ehuru
elaichi : key=cardamom
elaichi powder : key=cardamom
english mustard powder : key=mustard-powder proper=1
everything bagel seasoning : key=everything-bagel-seasoning
everything seasoning : key=everything-bagel-seasoning
fajita mix : key=fajita-seasoning
fajita seasoning : key=fajita-seasoning
fajita seasoning mix : key=fajita-seasoning
fajita spice mix : key=fajita-seasoning
fennel pollen
fennel powder : key=ground-fennel
fennel seeds = fennel seed : key=fennel-seeds
fenugreek : kind=fenugreek
fenugreek powder : kind=fenugreek key=ground-fenugreek
fenugreek seeds = fenugreek seed : kind=fenugreek key=fenugreek-seeds
filé powder : key=filé-powder
fish seasoning
five-spice : key=five-spice-powder
five-spice powder : key=five-spice-powder
freshly grated nutmeg : key=nutmeg
furikake
garam masala
garlic flakes : key=garlic-flakes
garlic granules : key=garlic-powder
garlic powder : key=garlic-powder
ginger
ginger powder : kind=ginger key=ground-ginger
gingerbread spice : key=gingerbread-spice
gochugaru : key=gochugaru
goda masala
grains of selim : key=uda-seed
granulated garlic : key=garlic-powder
granulated onion : key=onion-powder
grated nutmeg : key=nutmeg
gravy browning : group=sauce key=gravy-browning
greek seasoning : proper=1
green cardamom = green cardamoms : key=cardamom
grill seasoning
ground allspice : key=allspice
ground caraway : key=caraway-powder
ground cardamom : key=cardamom
ground cayenne : key=cayenne-pepper
ground celery seed
ground chipotle : key=chipotle-powder
ground cinnamon : key=cinnamon
ground clove : key=cloves
ground cloves : key=cloves
ground coriander : key=ground-coriander
ground crayfish : group=shellfish key=ground-crayfish
ground cumin : key=cumin
ground ehuru : key=ground-ehuru
ground fennel : key=ground-fennel
ground fennel seed : key=ground-fennel
ground fennel seeds : key=ground-fennel
ground fenugreek : kind=fenugreek key=ground-fenugreek
ground ginger : kind=ginger key=ground-ginger
ground mace : key=mace
ground mustard : key=mustard-powder
ground nutmeg : key=nutmeg
ground ogbono : key=ogbono
ground red pepper : key=cayenne-pepper
ground saffron : kind=saffron key=ground-saffron
ground star anise : key=star-anise-powder
ground sumac : key=sumac
ground turmeric : key=turmeric
ground vanilla : group=extract key=vanilla-powder
gumbo filé : key=filé-powder
gunpowder chutney : key=idli-podi
haldi : key=turmeric
hawaij = hawayej
hing : key=asafoetida
hot chilli powder : key=chilli-powder
hot curry powder : key=curry-powder
hot paprika : kind=paprika
hot pepper flakes : key=chilli-flakes
hot red pepper flakes : key=chilli-flakes
hot smoked paprika : kind=paprika
hungarian paprika : kind=paprika proper=1 key=hungarian-paprika
hungarian sweet paprika : kind=paprika key=hungarian-paprika proper=1
idli podi : key=idli-podi
instant dashi : group=stock key=dashi-powder
instant minced onion : key=onion-flakes
italian dressing mix : proper=1 key=italian-dressing-mix
italian salad dressing mix : key=italian-dressing-mix proper=1
jamaican curry powder : key=curry-powder proper=1
jamaican jerk seasoning : key=jerk-seasoning proper=1
japanese seven-spice : key=shichimi-togarashi proper=1
javitri : key=mace-blades
jeera : key=cumin-seed
jeera powder : key=cumin
jeera seeds : key=cumin-seed
jerk rub : key=jerk-seasoning
jerk seasoning : key=jerk-seasoning
jerk spice : key=jerk-seasoning
juniper
kala jeera : key=black-cumin
kalonji : key=nigella-seeds
kalpasi : key=black-stone-flower
kashmiri chilli powder = kashmiri chili powder : proper=1 key=kashmiri-chilli-powder
kashmiri red chilli powder : key=kashmiri-chilli-powder proper=1
kebab seasoning
khus khus : kind=poppy key=white-poppy-seeds
kitchen browning sauce : group=sauce key=gravy-browning
kitchen king masala
korean chili flakes : key=gochugaru proper=1
korean chili powder : key=gochugaru proper=1
korean chilli flakes : key=gochugaru proper=1
korean chilli powder : key=gochugaru proper=1
korean red pepper flakes : key=gochugaru proper=1
korean red pepper powder : key=gochugaru proper=1
lal mirch : key=chilli-powder
laung : key=cloves
lebanese seven-spice : key=baharat proper=1
lebkuchen spice : key=gingerbread-spice
lemon powder
licorice powder : key=licorice-root
licorice root = liquorice root : key=licorice-root
liquorice powder : key=licorice-root
long pepper powder
mace : ambiguous
mace blades = mace blade : key=mace-blades
madras curry powder : key=curry-powder proper=1
mahleb = mahlab
mango powder : key=amchoor
mastic = mastiha : ambiguous key=mastic
mastic gum : key=mastic
meat masala : key=meat-masala
meat tenderizer = meat tenderiser
medium curry powder : key=curry-powder
methi dana : kind=fenugreek key=fenugreek-seeds
methi seeds : kind=fenugreek key=fenugreek-seeds
milagai podi : key=idli-podi
mild chilli powder
mild curry powder : key=curry-powder
minced dried garlic : key=garlic-flakes
minced dried onion : key=onion-flakes
mitmita
mixed spice : key=mixed-spice
montreal steak seasoning : key=steak-seasoning
mulled wine spice : key=mulling-spices
mulling spices = mulling spice : key=mulling-spices
mushroom seasoning
mustard flour : key=mustard-powder
mustard powder : key=mustard-powder
mustard seeds = mustard seed : key=mustard-seeds
mutton masala : key=meat-masala
nigella : key=nigella-seeds
nigella seeds = nigella seed : key=nigella-seeds
nutmeg : key=nutmeg
nutritional yeast = nooch : key=nutritional-yeast
ogbono : key=ogbono
ogbono seeds : key=ogbono
omam : key=ajwain
onion flakes : key=onion-flakes
onion granules : key=onion-powder
onion powder : key=onion-powder
onion seeds : key=nigella-seeds
orris root
panch phoron = panch phoran : key=panch-phoron
paprika : key=paprika
pav bhaji masala
pepper flakes : key=chilli-flakes
pickling spice = pickling spices
pimento berries : kind=allspice key=allspice-berries
pimento powder : key=allspice
pimento seed : kind=allspice key=allspice-berries
pimentón : kind=paprika key=smoked-paprika
piri-piri seasoning = peri-peri seasoning
pomegranate powder : key=anardana
popcorn seasoning
poppy seeds = poppy seed, poppyseed, poppyseeds
pork rub : key=barbecue-rub
poultry seasoning
powdered ginger : kind=ginger key=ground-ginger
pudding spice : key=mixed-spice
pul biber : key=aleppo-pepper
pumpkin pie spice : key=pumpkin-pie-spice
pumpkin pie spice mix : key=pumpkin-pie-spice
pumpkin spice : key=pumpkin-pie-spice
rai : key=mustard-seeds ambiguous
ranch dressing mix : key=ranch-seasoning
ranch mix : key=ranch-seasoning
ranch seasoning : key=ranch-seasoning
ranch seasoning mix : key=ranch-seasoning
ras el hanout
rasam powder
red chili flakes : key=chilli-flakes
red chilli flakes : key=chilli-flakes
red chilli powder = red chili powder : key=chilli-powder
red pepper flakes = red pepper flake : key=chilli-flakes
rib rub : key=barbecue-rub
rose powder
saffron
saffron powder : kind=saffron key=ground-saffron
saffron strand : key=saffron
saffron strands : key=saffron
saffron threads = saffron thread : key=saffron
sambar masala : key=sambar-powder
sambar powder = sambhar powder : key=sambar-powder
sassafras
saunf : key=fennel-seeds
savoury yeast flakes : key=nutritional-yeast
sazón : key=sazón
sazón seasoning : key=sazón
seafood seasoning : key=seafood-seasoning
seasoning = seasonings : ambiguous key=seasoning
seasoning blend : key=seasoning
seasoning mix
seven spice mix : key=baharat
seven-spice : key=baharat
seven-spice powder : key=shichimi-togarashi
shahi jeera : key=black-cumin
shawarma seasoning : key=shawarma-spice
shawarma spice : key=shawarma-spice
shichimi togarashi : key=shichimi-togarashi
shrimp boil seasoning : key=seafood-seasoning
shrimp powder : group=shellfish key=shrimp-powder
smoke powder
smoked paprika : kind=paprika key=smoked-paprika
sonth : kind=ginger key=ground-ginger
spanish paprika : kind=paprika key=smoked-paprika proper=1
spanish smoked paprika : kind=paprika key=smoked-paprika proper=1
speculaas spice : key=gingerbread-spice
spice = spices : key=spice
spice blend : key=spice-mix
spice mix : key=spice-mix
spice mixture : key=spice-mix
spice rub : key=barbecue-rub
star anise powder : key=star-anise-powder
steak seasoning : key=steak-seasoning
steak spice : key=steak-seasoning
sumac : key=sumac
suya pepper : key=suya-spice
suya spice : key=suya-spice
sweet paprika : key=paprika
sweet smoked paprika : kind=paprika key=smoked-paprika
taco mix : key=taco-seasoning
taco seasoning : key=taco-seasoning
taco seasoning mix : key=taco-seasoning
taco spice mix : key=taco-seasoning
tandoori masala : key=tandoori-masala
tandoori powder : key=tandoori-masala
tandoori spice mix : key=tandoori-masala
tea masala : key=chai-masala
togarashi : key=shichimi-togarashi
tomato powder
turmeric = tumeric : key=turmeric
turmeric powder : key=turmeric
uda seed : key=uda-seed
urfa biber : proper=1 key=urfa-biber
urfa chilli : key=urfa-biber
urfa pepper : key=urfa-biber
vanilla bean powder : group=extract key=vanilla-powder
vanilla powder : group=extract key=vanilla-powder
vinegar powder
wasabi powder
wattleseed
white mustard seeds : kind=mustard key=yellow-mustard-seeds
white pepper powder
white poppy seeds = white poppy seed : kind=poppy key=white-poppy-seeds
whole cloves : key=cloves
whole coriander : key=coriander-seed
whole cumin : key=cumin-seed
whole nutmeg : key=nutmeg
whole spices : key=spice
yaji : key=suya-spice
yellow mustard seeds = yellow mustard seed : kind=mustard key=yellow-mustard-seeds
za'atar = zaatar, zatar
zeera : key=cumin-seed
zesty italian dressing mix : key=italian-dressing-mix
@ FOOD noun group=spice
bay berry
black cardamom pod
cacao nib : group=chocolate key=cocoa-nib
cardamom pod = pod of cardamom : key=cardamom-pod
cinnamon bark : key=cinnamon-stick
cinnamon quill : key=cinnamon-stick
cinnamon stick : key=cinnamon-stick
cocoa nib : group=chocolate key=cocoa-nib
dalchini : key=cinnamon-stick
green cardamom pod : key=cardamom-pod
nutmeg seed : key=nutmeg
seeds of a vanilla pod : group=extract key=vanilla-seed
star anise = star anises : mass
tonka bean
vanilla bean : group=extract key=vanilla-pod
vanilla pod : group=extract key=vanilla-pod
vanilla seed : group=extract key=vanilla-seed

# Raising agents
@ FOOD noun mass group=leavening
alkaline water : key=lye-water
ammonium bicarbonate : key=bakers-ammonia
ammonium carbonate : key=bakers-ammonia
ascorbic acid : key=ascorbic-acid
baked baking soda : key=lye-water
baker's ammonia : key=bakers-ammonia
baking powder : key=baking-powder
baking soda : key=bicarbonate-of-soda
bicarbonate of soda = bicarb, bicarb of soda, bicarb soda, soda bicarb, soda bicarbonate, bicarbonate soda : key=bicarbonate-of-soda
calcium chloride
citric acid
cream of tartar = cream of tarter
double-acting baking powder : key=baking-powder
food-grade lye
fruit salt
gluten-free baking powder : key=baking-powder
hartshorn : key=bakers-ammonia
kansui : key=lye-water
lye water : key=lye-water
malic acid
pickling lime : key=pickling-lime
potash
potassium carbonate solution : key=lye-water
slaked lime : key=pickling-lime
sodium bicarbonate : key=bicarbonate-of-soda
tartaric acid
vitamin c powder : key=ascorbic-acid
@ FOOD noun mass group=yeast
active dried yeast : key=active-dry-yeast
active dry yeast : key=active-dry-yeast
active starter : group=yeast key=sourdough-starter
baker's yeast : key=fresh-yeast
biga
bread machine yeast : key=instant-yeast
brewer's yeast
cake yeast : key=fresh-yeast
champagne yeast : key=champagne-yeast
compressed yeast : key=fresh-yeast
dried yeast : key=dried-yeast
dry yeast : key=dried-yeast
easy-bake yeast : key=instant-yeast
easy-blend dried yeast : key=instant-yeast
easy-blend yeast : key=instant-yeast
fast yeast : key=instant-yeast
fast-acting dried yeast : key=instant-yeast
fast-action dried yeast : key=instant-yeast
fast-action yeast = fast-acting yeast : key=instant-yeast
fresh yeast : key=fresh-yeast
instant dried yeast : key=instant-yeast
instant dry yeast : key=instant-yeast
instant yeast : key=instant-yeast
kefir culture : group=dairy key=kefir-grains
kefir grains : group=dairy key=kefir-grains
koji : key=koji
levain : group=yeast key=sourdough-starter ambiguous
live yeast : key=fresh-yeast
poolish
quick yeast : key=instant-yeast
quick-rise yeast : key=instant-yeast
rapid-rise yeast : key=instant-yeast
rennet : group=setting-agent key=rennet
rennet tablet : group=setting-agent key=rennet
rice koji : key=koji
ripe starter : group=yeast key=sourdough-starter
shio koji : key=koji
sourdough culture : group=yeast key=sourdough-starter
sourdough discard : group=yeast key=sourdough-starter
sourdough starter : group=yeast key=sourdough-starter
starter : ambiguous key=sourdough-starter
starter discard : group=yeast key=sourdough-starter
vegetable rennet : group=setting-agent key=rennet
wine yeast : key=champagne-yeast
yeast
yoghurt starter : group=dairy key=yogurt-culture
yogurt culture : group=dairy key=yogurt-culture
yogurt starter : group=dairy key=yogurt-culture

# Setting agents
@ FOOD noun mass group=setting-agent
agar : key=agar-agar
agar agar : key=agar-agar
agar flakes : key=agar-agar
agar powder : key=agar-agar
agar-agar powder : key=agar-agar
blancmange powder
brown gravy mix : group=sauce key=gravy-granules
carrageenan
chicken gravy mix : group=sauce key=gravy-granules
cream stiffener : key=whipped-cream-stabiliser
custard powder : key=custard-powder
egg replacer : group=setting-agent key=egg-replacer
egg substitute powder : group=setting-agent key=egg-replacer
fruit pectin : key=pectin
gelatin = gelatine : key=gelatin
gelatin powder : key=gelatin
gelatine powder : key=gelatin
gravy granules = gravy granule : group=sauce key=gravy-granules
gravy mix : group=sauce key=gravy-granules
gravy powder : group=sauce key=gravy-granules
guar gum
instant custard powder : key=custard-powder
instant gravy : group=sauce key=gravy-granules
instant thickener : key=sauce-thickener
isinglass
junket powder
liquid pectin : key=pectin
meringue powder : group=egg
modified starch
pectin : key=pectin
powdered gelatin : key=gelatin
powdered gelatine : key=gelatin
powdered pectin : key=pectin
psyllium : key=psyllium-husk
psyllium husk : key=psyllium-husk
psyllium husk powder : key=psyllium-husk
psyllium powder : key=psyllium-husk
sauce thickener : key=sauce-thickener
thickening granules : key=sauce-thickener
turkey gravy mix : group=sauce key=gravy-granules
unflavored gelatin : key=gelatin
unflavored gelatin powder : key=gelatin
unflavoured gelatine : key=gelatin
vanilla custard powder : key=custard-powder
vegan egg replacer : group=setting-agent key=egg-replacer
vegetarian gelatine : key=agar-agar
whipped cream stabiliser = whipped cream stabilizer : key=whipped-cream-stabiliser
xanthan gum
@ FOOD noun group=setting-agent
gelatin sheet = gelatine sheet : key=gelatin-leaf
gelatine leaf : plural=leaves key=gelatin-leaf
leaf gelatine = leaf gelatin : mass key=gelatin-leaf
sheet gelatin : mass key=gelatin-leaf

# Extracts and colours
@ FOOD noun mass group=extract
almond essence : key=almond-extract
almond extract : key=almond-extract
anise extract
aromatic bitters : group=spirit key=bitters
banana essence : key=banana-extract
banana extract : key=banana-extract
barley malt extract : group=syrup key=malt-extract
barley malt syrup : group=syrup key=malt-extract
beef extract
bitters : group=spirit ambiguous key=bitters
blue food colouring = blue food coloring
butter extract : key=butter-extract
butter flavoring : key=butter-extract
butter flavouring : key=butter-extract
cocktail bitters : group=spirit key=bitters
coconut essence : key=coconut-extract
coconut extract : key=coconut-extract
coconut flavoring : key=coconut-extract
coconut flavouring : key=coconut-extract
coffee essence : key=coffee-extract
coffee extract : key=coffee-extract
colouring = coloring : ambiguous
edible glitter : key=edible-glitter
edible gold leaf : key=gold-leaf
flavouring = flavoring : ambiguous
food color : key=food-colouring
food coloring : key=food-colouring
food colouring : key=food-colouring
food dye : key=food-colouring
gel colouring : key=gel-food-colouring
gel food color : key=food-colouring
gel food colouring = gel food coloring : key=gel-food-colouring
gold leaf : key=gold-leaf
green food colouring = green food coloring
hickory liquid smoke : key=liquid-smoke
kewra : key=kewra-water
kewra essence : key=kewra-water
kewra water : key=kewra-water
lemon essence : key=lemon-extract
lemon extract : key=lemon-extract
lemon oil : key=lemon-extract
liquid smoke : key=liquid-smoke
luster dust : key=edible-glitter
lustre dust : key=edible-glitter
malt extract : group=syrup key=malt-extract
malt syrup : group=syrup key=malt-extract
maple essence : key=maple-extract
maple extract : key=maple-extract
maple flavoring : key=maple-extract
maple flavouring : key=maple-extract
mint essence : key=peppermint-extract
mint extract : key=peppermint-extract
orange bitters : group=spirit key=bitters
orange blossom water : key=orange-blossom-water
orange essence : key=orange-extract
orange extract : key=orange-extract
orange flower water : key=orange-blossom-water
orange food colouring = orange food coloring
orange oil : key=orange-extract
pandan essence : key=pandan-extract
pandan extract : key=pandan-extract
pandan paste : key=pandan-extract
pandanus water : key=kewra-water
paste food colouring : key=gel-food-colouring
peppermint essence : key=peppermint-extract
peppermint extract : key=peppermint-extract
peppermint oil
pink food colouring = pink food coloring
pure almond extract : key=almond-extract
pure vanilla : key=vanilla-extract
pure vanilla extract : key=vanilla-extract
real vanilla extract : key=vanilla-extract
red food colouring = red food coloring : key=red-food-colouring
red food dye : key=red-food-colouring
root beer extract
rose water = rosewater
rum essence : key=rum-extract
rum extract : key=rum-extract
rum flavoring : key=rum-extract
rum flavouring : key=rum-extract
savoury yeast spread : key=yeast-extract
strawberry essence : key=strawberry-extract
strawberry extract : key=strawberry-extract
strawberry flavouring : key=strawberry-extract
truffle oil : group=oil
vanilla
vanilla bean paste : key=vanilla-paste
vanilla essence : key=vanilla-essence
vanilla extract : key=vanilla-extract
vanilla flavoring : key=vanilla-essence
vanilla flavouring : key=vanilla-essence
vanilla paste : key=vanilla-paste
vanilla pod paste : key=vanilla-paste
yeast extract : key=yeast-extract
yellow food colouring = yellow food coloring
