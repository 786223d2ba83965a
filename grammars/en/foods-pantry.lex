# Oil, fat, vinegar, stock, soup, water.

# Oil
@ FOOD noun mass group=oil liquid free kind=oil
avocado oil
baking spray : kind=spray
canola oil : key=rapeseed-oil
coconut oil
coconut oil spray : kind=spray
cold-pressed rapeseed oil : key=rapeseed-oil
cooking oil
cooking oil spray : kind=spray
cooking spray : kind=spray key=cooking-spray
corn oil
cottonseed oil
deep-frying oil
dendê oil
ev olive oil
extra-virgin oil : key=extra-virgin-olive-oil
extra-virgin olive oil = evoo : key=extra-virgin-olive-oil
flavorless oil
flavourless oil : key=neutral-oil
frying oil
grapeseed oil
groundnut oil : key=peanut-oil
high-heat oil
light olive oil
low-calorie cooking spray : kind=spray
melted coconut oil
mild olive oil
mustard oil
neutral cooking oil
neutral oil : key=neutral-oil
neutral-flavoured oil : key=neutral-oil
neutral-tasting oil
non-stick spray : kind=spray key=cooking-spray
nonstick cooking spray : kind=spray key=cooking-spray
nonstick spray : kind=spray
oil = oils
oil spray : kind=spray key=cooking-spray
olive oil
olive oil cooking spray : kind=spray
olive oil spray : kind=spray
palm oil
peanut oil : key=peanut-oil
pure olive oil
rapeseed oil : key=rapeseed-oil
red palm oil
refined coconut oil
rice bran oil
safflower oil
seasoned oil
soya oil
soybean oil
spray oil : kind=spray
sunflower oil
vegetable cooking spray : kind=spray
vegetable oil = veg oil, veggie oil
vegetable oil spray : kind=spray
virgin coconut oil
virgin olive oil
@ FOOD noun mass group=oil liquid kind=oil
achiote oil
almond oil
anchovy oil
annatto oil
argan oil
asian sesame oil : proper=1
basil oil
chili oil : key=chilli-oil
chilli oil : key=chilli-oil
chilli-infused oil
cod liver oil
curry oil
dark sesame oil
flaxseed oil
garlic oil
garlic-infused oil
garlic-infused olive oil
gingelly oil
ginger-scallion oil
hazelnut oil
hemp oil
hemp seed oil
herb oil
hot chili oil : key=chilli-oil
infused oil
lemon oil infused
lemon olive oil
light sesame oil
linseed oil
macadamia oil
mct oil : proper=1
oil from the anchovies
oil from the sun-dried tomatoes
perilla oil
pistachio oil
pumpkin seed oil
scallion oil
sesame oil : key=sesame-oil
shallot oil
sichuan pepper oil : proper=1
smoked oil
spring onion oil
sun-dried tomato oil
til oil
toasted sesame oil : key=sesame-oil
untoasted sesame oil
walnut oil

# Fat
@ FOOD noun mass group=fat kind=fat
animal fat
back fat
bacon drippings : kind=bacon-fat key=bacon-fat
bacon fat : kind=bacon-fat key=bacon-fat
bacon grease : kind=bacon-fat key=bacon-fat
beef fat : key=tallow
beef suet
beef tallow
block vegetable fat
butter-flavored shortening : key=shortening kind=shortening
caul lard
chicken fat : key=chicken-fat
cultured fat
dripping : ambiguous
drippings : group=stock key=pan-drippings
duck fat
fat : ambiguous
goose fat
ham drippings : group=stock
lamb fat
lard
leaf lard : kind=lard
meat drippings : group=stock
meat juices : group=stock
mutton fat
pan drippings : group=stock key=pan-drippings
pan juices : group=stock key=pan-drippings
pork back fat
pork fat
rendered bacon fat : kind=bacon-fat
roast drippings : group=stock
roasting juices : group=stock key=pan-drippings
schmaltz : key=chicken-fat
shortening
shredded suet
solid vegetable fat : key=solid-vegetable-fat
suet
tail fat
tallow : key=tallow
turkey drippings : group=stock
vegetable fat : key=solid-vegetable-fat
vegetable shortening : key=shortening kind=shortening
vegetable suet : kind=suet
vegetarian suet : kind=suet
white vegetable fat

# Vinegar
@ FOOD noun mass group=vinegar liquid kind=vinegar
acv : key=apple-cider-vinegar
apple cider vinegar : key=apple-cider-vinegar
balsamic : key=balsamic-vinegar
balsamic glaze : group=sauce kind=glaze key=balsamic-glaze
balsamic reduction : group=sauce kind=glaze key=balsamic-glaze
balsamic syrup : group=sauce kind=glaze
balsamic vinegar : key=balsamic-vinegar
black vinegar : key=black-vinegar
brine : ambiguous group=condiment kind=brine
brown rice vinegar
brown vinegar
cane vinegar
caper brine : group=condiment kind=brine
champagne vinegar
chinese black rice vinegar : proper=1
chinese black vinegar : key=black-vinegar proper=1
chinese red vinegar : proper=1
chinkiang vinegar : key=black-vinegar
cider vinegar : key=apple-cider-vinegar
clear vinegar
coconut vinegar
date vinegar
dill pickle juice : group=condiment kind=brine
distilled vinegar
distilled white vinegar : key=white-vinegar
fig vinegar
gherkin brine : group=condiment kind=brine
gherkin juice : group=condiment kind=brine
grape vinegar
herb vinegar
jalapeno brine : group=condiment kind=brine
jalapeño juice : group=condiment kind=brine
liquid from the pickles : group=condiment kind=brine
malt vinegar
olive brine : group=condiment kind=brine
olive juice : group=condiment kind=brine
palm vinegar
persimmon vinegar
pickle brine : group=condiment kind=brine
pickle juice : group=condiment kind=brine
pickled jalapeño juice : group=condiment kind=brine
pickling liquid : group=condiment kind=brine
pickling vinegar
plum vinegar
ponzu : group=sauce
ponzu sauce : group=sauce
raspberry vinegar
raw apple cider vinegar
red rice vinegar
red wine vinegar
rice vinegar : key=rice-vinegar
rice wine vinegar : key=rice-vinegar
seasoned rice vinegar
sherry vinegar
spirit vinegar
sukang
sushi seasoning
sushi vinegar
tarragon vinegar
ume vinegar
umeboshi vinegar
verjuice : key=verjuice
verjus : key=verjuice
vinegar = vinegars
white balsamic : key=white-balsamic-vinegar
white balsamic condiment
white balsamic vinegar : key=white-balsamic-vinegar
white vinegar : key=white-vinegar
white wine vinegar
wine vinegar
zhenjiang vinegar

# Stock
@ FOOD noun mass group=stock liquid kind=stock
anchovy broth
anchovy stock
awase dashi
bacon stock
bean cooking liquid
bean liquid
beef bone broth : kind=broth
beef bouillon
beef broth : kind=broth key=beef-stock
beef consommé
beef stock
bone broth : kind=broth
bottled clam juice
bouillon
braising liquid
broth : ambiguous kind=broth dish
brown chicken stock
brown stock
canned beef broth : kind=broth key=beef-stock
canned chicken broth : kind=broth key=chicken-stock
chicken bone broth : kind=broth
chicken bouillon
chicken broth : kind=broth key=chicken-stock
chicken consommé
chicken stock
clam broth
clam juice
clam liquor
condensed beef broth
condensed beef consommé
condensed chicken broth
consommé
cooking liquid : ambiguous key=cooking-liquid
cooking liquor : key=cooking-liquid
court bouillon
crab stock
dashi
dashi broth
dashi stock
duck stock
fat-free chicken broth : kind=broth key=chicken-stock
fish fumet : key=fish-stock
fish stock : key=fish-stock
fresh chicken stock
fumet
game stock
giblet stock
ham stock
homemade chicken broth : kind=broth key=chicken-stock
homemade chicken stock
hot beef stock
hot chicken stock
hot pot broth : kind=broth
hot vegetable stock
hotpot soup base : kind=broth
kombu dashi
korean anchovy stock : proper=1
lamb stock
lobster broth
lobster stock
low-sodium beef broth : kind=broth key=beef-stock
low-sodium chicken broth : kind=broth key=chicken-stock
low-sodium vegetable broth : kind=broth key=vegetable-stock
miso broth : kind=broth
mushroom broth
mushroom soaking liquid : key=mushroom-soaking-liquid
mushroom soaking water
mushroom stock
organic vegetable broth : kind=broth key=vegetable-stock
pheasant stock
pho broth : kind=broth
poaching liquid
porcini soaking liquid
pork bone broth : kind=broth
pork broth : kind=broth
pork stock
prawn stock
ramen broth : kind=broth
reduced-sodium beef broth : kind=broth key=beef-stock
reduced-sodium chicken broth : kind=broth key=chicken-stock
rich beef stock
rich chicken stock
seafood broth
seafood stock : key=shellfish-stock
shellfish broth
shellfish stock : key=shellfish-stock
shrimp stock
soaking liquid : key=mushroom-soaking-liquid
soaking liquor
stock : ambiguous dish
tonkotsu broth : kind=broth
turkey broth : key=turkey-stock
turkey stock : key=turkey-stock
veal stock
vegetable bouillon
vegetable broth = veg broth : kind=broth key=vegetable-stock
vegetable stock = veg stock, veggie stock
veggie broth : kind=broth key=vegetable-stock
@ FOOD noun group=stock
beef bouillon cube : kind=cube
beef flavored bouillon cube : kind=cube
beef stock cube : kind=cube
beef stock pot : kind=stock-pot
bouillon cube : kind=cube
chicken bouillon cube : kind=cube
chicken stock cube : kind=cube
chicken stock pot : kind=stock-pot
fish stock cube : kind=cube
gel stock pot : kind=stock-pot
ham stock cube : kind=cube
jelly stock pot : kind=stock-pot
lamb stock cube : kind=cube
low-salt stock cube : kind=cube
mushroom stock cube : kind=cube
reduced-salt stock cube : kind=cube
reduced-salt vegetable stock cube : kind=cube
rich beef stock pot : kind=stock-pot
seasoning cube : kind=cube
stock cube : kind=cube
stock tablet : kind=cube
tomato bouillon cube : kind=cube
veg stock cube : kind=cube
vegetable bouillon cube : kind=cube
vegetable stock cube : kind=cube
vegetable stock pot : kind=stock-pot
@ FOOD noun mass group=stock
beef base
beef bouillon granules
beef stock concentrate
beef stock powder
bouillon base
bouillon granules
bouillon paste : key=stock-concentrate
bouillon powder : key=stock-powder
chicken base
chicken bouillon granules
chicken bouillon powder
chicken flavored bouillon granules
chicken powder
chicken soup base
chicken stock concentrate
chicken stock powder : key=stock-powder
concentrated chicken stock
concentrated stock
demi-glace concentrate
instant beef bouillon
instant bouillon
instant chicken bouillon
liquid chicken stock
liquid stock concentrate
lobster base
mushroom bouillon powder
ramen soup base
roasted chicken base
stock base
stock concentrate : key=stock-concentrate
stock granules
stock powder : key=stock-powder
swiss vegetable bouillon powder : proper=1
vegetable base
vegetable bouillon granules
vegetable bouillon powder
vegetable stock concentrate
vegetable stock powder : key=stock-powder

# Soup, fresh, tinned and dry
@ FOOD noun mass group=soup kind=soup
bean soup mix
beefy onion soup mix
broccoli cheese soup
broth mix
canned soup
canned tomato soup
cheddar cheese soup : key=cheddar-cheese-soup
cheese soup : key=cheddar-cheese-soup
chicken noodle soup mix
chicken soup mix
condensed bean with bacon soup
condensed black bean soup
condensed broccoli cheese soup
condensed cheddar cheese soup
condensed chicken soup
condensed clam chowder
condensed cream of celery soup
condensed cream of chicken soup
condensed cream of mushroom soup
condensed cream of onion soup
condensed creamy soup
condensed french onion soup
condensed golden mushroom soup
condensed mushroom soup
condensed onion soup
condensed soup
condensed tomato soup
condensed vegetable soup
cream of asparagus soup
cream of bacon soup
cream of broccoli soup
cream of celery : key=cream-of-celery-soup
cream of celery soup : key=cream-of-celery-soup
cream of chicken : key=cream-of-chicken-soup
cream of chicken soup : key=cream-of-chicken-soup
cream of chicken soup mix
cream of leek soup
cream of mushroom : key=cream-of-mushroom-soup
cream of mushroom soup : key=cream-of-mushroom-soup
cream of onion soup
cream of potato soup
cream of shrimp soup
cream of tomato
cream of tomato soup
cream of vegetable soup
cup soup
dried french onion soup
dried soup mix
dry leek soup mix
dry onion soup mix : key=onion-soup-mix
dry vegetable soup mix
fiesta nacho cheese soup
french onion soup : proper=1 key=french-onion-soup
french onion soup mix : key=onion-soup-mix proper=1
golden mushroom soup
golden onion soup mix
instant miso soup
instant soup mix
leek soup mix
low-fat cream of chicken soup
low-sodium cream of mushroom soup
mushroom soup
mushroom soup mix
nacho cheese soup
onion mushroom soup mix
onion recipe soup mix
onion soup : key=french-onion-soup
onion soup mix : key=onion-soup-mix
packet soup
packet soup mix
reduced-fat cream of mushroom soup
soup : ambiguous dish
soup mix : key=vegetable-soup-mix
spring vegetable soup mix
tinned soup
tinned tomato soup
tomato soup
tomato soup mix
vegetable soup mix : key=vegetable-soup-mix

# Water
@ FOOD noun mass group=water liquid free kind=water
aquafaba : group=egg key=aquafaba
bean water
boiled water
boiling salted water
boiling water
bottled water
brine from the chickpeas : group=egg
carbonated water
chickpea brine : group=egg
chickpea liquid : group=egg
chickpea water : group=egg key=aquafaba
chilled water
club soda : key=soda-water
coconut water : group=beverage
cold water
cooking water
crushed ice : key=ice
distilled water
filtered water
fizzy water : key=sparkling-water
freshly boiled water
hand-hot water
hot water
ice : ambiguous key=ice
ice block
ice cube = ice cubes
ice water : key=iced-water
ice-cold water
iced water : key=iced-water
just-boiled water
lightly salted water
liquid from a can of chickpeas : group=egg
liquid from the chickpeas : group=egg
lukewarm water
mineral water
pasta cooking liquid
pasta cooking water : key=pasta-water
pasta liquid
pasta water : key=pasta-water
potato cooking water
potato water
reserved pasta water
rice water
salt water
salted water
salty water
seltzer : key=sparkling-water
seltzer water
shaved ice
soda water : key=soda-water
sparkling mineral water
sparkling water : key=sparkling-water
spring water
starchy pasta water
starchy water
tap water
tepid water
vegetable water
warm water
water
