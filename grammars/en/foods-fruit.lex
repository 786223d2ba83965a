# Fruit: fresh, citrus, berries, dried, tinned and puréed; zest, peel, juice.

# Tree fruit
@ FOOD noun group=fruit kind=apple
apple
apple peel : mass key=apple-peel
apple purée : mass
apple ring : group=dried-fruit key=dried-apple
apple sauce : mass key=apple-sauce
apple skin : mass key=apple-peel
applesauce : mass key=apple-sauce
baking apple
braeburn apple : proper=1
bramley apple : proper=1
cooking apple
cortland apple : proper=1
cox apple = cox's apple : proper=1 key=cox-apple
cox's orange pippin : key=cox-apple
crab apple = crabapple
dessert apple : key=eating-apple
discovery apple : proper=1
dried apple : group=dried-fruit key=dried-apple
dried apple ring : group=dried-fruit key=dried-apple
eating apple : key=eating-apple
egremont russet : key=russet-apple
empire apple : proper=1
fuji apple : proper=1
gala apple : proper=1
golden delicious : key=golden-delicious-apple
golden delicious apple : proper=2 key=golden-delicious-apple
granny smith : key=granny-smith-apple
granny smith apple : proper=2 key=granny-smith-apple
green apple
honeycrisp : key=honeycrisp-apple
honeycrisp apple : proper=1 key=honeycrisp-apple
jonagold : key=jonagold-apple
jonagold apple : proper=1 key=jonagold-apple
jonathan apple : proper=1
mcintosh apple : proper=1
northern spy apple : proper=2
red apple
red delicious : key=red-delicious-apple
red delicious apple : proper=2 key=red-delicious-apple
rome apple : proper=1
russet apple : key=russet-apple
stewed apple : mass
tart apple
unsweetened applesauce : mass key=apple-sauce
@ FOOD noun group=fruit
anjou pear : kind=pear proper=1
apricot
apricot half : kind=apricot key=tinned-apricot plural=halves
aril : key=pomegranate-seed
asian pear : kind=pear proper=1 key=asian-pear
bartlett pear : kind=pear proper=1 key=bartlett-pear
bing cherry : kind=cherry proper=1
black cherry : kind=cherry key=black-cherry
black mission fig : kind=fig key=black-mission-fig
black olive : kind=olive
black plum : kind=plum
bosc pear : kind=pear proper=1
brandied cherry : kind=cherry key=brandied-cherry
candied cherry : kind=cherry key=glacé-cherry
canned apricot : kind=apricot key=tinned-apricot
canned cherry : kind=cherry key=tinned-cherry
canned peach : kind=peach key=tinned-peach
canned pear : kind=pear key=tinned-pear
castelvetrano : kind=olive key=castelvetrano-olive
castelvetrano olive : kind=olive proper=1 key=castelvetrano-olive
cerignola olive : kind=olive proper=1
cherries in brandy : kind=cherry key=brandied-cherry
cherries in syrup : kind=cherry key=tinned-cherry
cherry
cherry in kirsch = cherries in kirsch : mass kind=cherry
cocktail cherry : kind=cherry key=maraschino-cherry
comice pear : kind=pear proper=1
conference pear : kind=pear proper=1
damson
dark cherry : kind=cherry key=black-cherry
dark sweet cherry : kind=cherry key=black-cherry
donut peach : kind=peach key=flat-peach
doughnut peach : kind=peach key=flat-peach
dried pear : group=dried-fruit
dry-cured olive : kind=olive key=dry-cured-olive
fig
flat peach : kind=peach key=flat-peach
fresh fig : kind=fig
frozen cherry : kind=cherry
fuyu persimmon : kind=persimmon proper=1
gaeta olive : kind=olive proper=1
glacé cherry : kind=cherry key=glacé-cherry
gordal : kind=olive key=gordal-olive
gordal olive : kind=olive key=gordal-olive
green olive : kind=olive
greengage
hachiya persimmon : kind=persimmon proper=1
italian plum : kind=plum proper=1 key=italian-plum
jarred cherry : kind=cherry key=tinned-cherry
kalamata : kind=olive key=kalamata-olive
kalamata olive = calamata olive : kind=olive proper=1 key=kalamata-olive
korean pear : kind=pear key=asian-pear proper=1
ligurian olive : kind=olive proper=1 key=ligurian-olive
loquat
manzanilla : kind=olive key=manzanilla-olive
manzanilla olive : kind=olive key=manzanilla-olive
maraschino cherry : kind=cherry key=maraschino-cherry
medlar
mirabelle : key=mirabelle
mirabelle plum : key=mirabelle
mission fig : kind=fig key=black-mission-fig
mixed olive : kind=olive key=pitted-olive
montmorency cherry : kind=cherry key=sour-cherry
morello : kind=cherry key=morello-cherry
morello cherry : kind=cherry key=morello-cherry
nashi : kind=pear key=asian-pear
nashi pear : kind=pear key=asian-pear
nectarine
nicoise : kind=olive key=niçoise-olive
niçoise olive : kind=olive proper=1 key=niçoise-olive
nocellara olive : kind=olive key=castelvetrano-olive
oil-cured olive : kind=olive key=dry-cured-olive
olive
packham pear : kind=pear proper=1
peach
peach half : kind=peach key=tinned-peach plural=halves
peaches in syrup : kind=peach key=tinned-peach
pear
pear half : kind=pear key=tinned-pear plural=halves
persimmon : key=persimmon
pie cherry : kind=cherry key=sour-cherry
pimento-stuffed olive : kind=olive key=stuffed-olive
pimiento-stuffed olive : kind=olive key=stuffed-olive
pitted olive : kind=olive key=pitted-olive
plum : ambiguous
pluot
poached pear : kind=pear
pomegranate
pomegranate aril : key=pomegranate-seed
pomegranate seed : key=pomegranate-seed
prune plum : kind=plum key=italian-plum
quince
rainier cherry : kind=cherry proper=1
red plum : kind=plum
ripe olive : kind=olive
saturn peach : kind=peach key=flat-peach
sharon fruit : key=persimmon
sloe
sour cherry : kind=cherry key=sour-cherry
sour plum : kind=plum
spanish olive : kind=olive proper=1
stuffed green olive : kind=olive key=stuffed-olive
stuffed olive : kind=olive key=stuffed-olive
sweet cherry : kind=cherry
taggiasca olive : kind=olive key=ligurian-olive
tart cherry : kind=cherry key=sour-cherry
tinned apricot : kind=apricot key=tinned-apricot
tinned cherry : kind=cherry key=tinned-cherry
tinned peach : kind=peach key=tinned-peach
tinned pear : kind=pear key=tinned-pear
umeboshi : group=condiment key=umeboshi
umeboshi plum : group=condiment key=umeboshi
victoria plum : kind=plum proper=1
white peach : kind=peach
williams pear : kind=pear key=bartlett-pear
yellow peach : kind=peach

# Tropical fruit, melons, vine fruit
@ FOOD noun group=fruit
acai puree : mass key=açaí
acerola : key=acerola
acerola cherry : key=acerola
ackee = akee : mass key=ackee
alligator pear : key=avocado
aloe vera : mass
alphonso mango : kind=mango proper=1
alphonso mango pulp : mass kind=mango key=mango-pulp
apple pie filling : mass
ataulfo mango : kind=mango proper=1 key=ataulfo-mango
avocado = avo, avos : key=avocado
açaí : mass key=açaí
açaí pulp : mass key=açaí
banana
banana chip : group=dried-fruit
berry compote : mass key=fruit-compote
black grape : kind=grape
blueberry pie filling : mass
breadfruit
cactus pear : key=prickly-pear
canary melon : kind=melon
canned ackee : mass key=ackee
canned fruit : key=tinned-fruit
canned jackfruit : mass key=jackfruit
canned pineapple : mass kind=pineapple key=tinned-pineapple
cantaloupe = cantaloup : kind=melon key=cantaloupe
cantaloupe melon : kind=melon key=cantaloupe
cape gooseberry : proper=1 key=cape-gooseberry
carambola : key=star-fruit
champagne mango : kind=mango key=ataulfo-mango
charentais : kind=melon key=charentais-melon
charentais melon : kind=melon key=charentais-melon
cherimoya
cherry pie filling : mass
chinese date : group=dried-fruit key=jujube proper=1
chinese red date : group=dried-fruit key=jujube proper=1
compote : mass key=fruit-compote dish
concord grape : kind=grape proper=1
crushed pineapple : mass kind=pineapple key=tinned-pineapple
custard apple : key=custard-apple
dragon fruit : key=dragon-fruit
dried fruit : group=dried-fruit key=dried-fruit
dried jujube : group=dried-fruit key=jujube
durian
feijoa
fresh coconut : mass group=nut kind=coconut
fresh fruit
frozen banana : kind=banana
frozen fruit
frozen mango : mass kind=mango
fruit
fruit cocktail : mass key=fruit-salad
fruit compote : mass key=fruit-compote
fruit pie filling : mass key=fruit-pie-filling
fruit pulp : mass
fruit purée
fruit salad : mass key=fruit-salad
galia melon : kind=melon
goiabada : mass group=confection key=guava-paste
golden kiwi = gold kiwi : kind=kiwi
goldenberry : key=cape-gooseberry
grape
green banana : kind=banana key=green-banana
green fig : kind=banana key=green-banana
green grape : kind=grape
green jackfruit : mass key=jackfruit
green mango : kind=mango key=green-mango
green papaya : kind=papaya
green plantain : kind=plantain
ground cherry : key=cape-gooseberry
guanabana : key=soursop
guava
guava paste : mass group=confection key=guava-paste
hass avocado : kind=avocado proper=1
honey mango : kind=mango key=ataulfo-mango
honeydew : kind=melon key=honeydew-melon
honeydew melon : kind=melon key=honeydew-melon
horned melon : key=horned-melon
jackfruit : mass key=jackfruit
jujube : group=dried-fruit key=jujube
kacha aam : kind=mango key=green-mango
kiwano : key=horned-melon
kiwi = kiwis : key=kiwi
kiwi fruit : key=kiwi
kiwifruit : key=kiwi
lemon pie filling : mass
litchi : key=lychee
longan
lychee = lichee : key=lychee
mango = mangos
mango pulp : mass kind=mango key=mango-pulp
mango purée : mass kind=mango key=mango-pulp
mangosteen
matoke : kind=banana key=green-banana
melon
mini watermelon : kind=watermelon
mixed dried fruit : group=dried-fruit key=dried-fruit
mixed fruit
mixed peel and fruit : group=dried-fruit key=dried-fruit
muscat grape : kind=grape
overripe banana = over-ripe banana : key=banana
papaya : key=papaya
passion fruit = passionfruit
passion fruit pulp = passionfruit pulp : mass
paw paw : key=papaya
pawpaw : key=papaya
peach pie filling : mass
physalis : key=cape-gooseberry
pie filling : mass key=fruit-pie-filling
piel de sapo melon : kind=melon
pineapple
pineapple chunk : mass kind=pineapple key=tinned-pineapple
pineapple ring : mass kind=pineapple key=tinned-pineapple
pineapple tidbit : mass kind=pineapple key=tinned-pineapple
pitahaya : key=dragon-fruit
pitaya : key=dragon-fruit
plantain
prickly pear : key=prickly-pear
pumpkin pie filling : mass key=pumpkin-pie-filling
pumpkin pie mix : mass key=pumpkin-pie-filling
rambutan
raw mango : kind=mango key=green-mango
red date : group=dried-fruit key=jujube
red grape : kind=grape
ripe banana : key=banana
ripe plantain : kind=plantain
rock melon : kind=melon key=cantaloupe
rockmelon : kind=melon key=cantaloupe
sapodilla
seasonal fruit
seedless grape : kind=grape key=seedless-grape
seedless green grape : kind=grape key=seedless-grape
seedless red grape : kind=grape key=seedless-grape
soursop : key=soursop
spotty banana : key=banana
star fruit = starfruit : key=star-fruit
stone fruit
strawberry pie filling : mass
sugar apple : key=custard-apple
sweetsop : key=custard-apple
tamarind pod
tinned fruit : key=tinned-fruit
tinned pineapple : mass kind=pineapple key=tinned-pineapple
tropical fruit
tuna fruit : key=prickly-pear
watermelon
watermelon rind : mass
white grape : kind=grape
young coconut : group=fruit
young green jackfruit : mass key=jackfruit
young jackfruit : mass key=jackfruit

# Citrus: fruit, zest, peel, juice
@ FOOD noun group=citrus
aged tangerine peel : mass group=spice key=dried-orange-peel
amalfi lemon : kind=lemon proper=1
bergamot
bitter orange : kind=orange key=seville-orange
bitter orange juice : mass liquid key=sour-orange-juice
black lime : key=dried-lime
blood orange : kind=orange
blood orange juice : mass liquid
bottled lemon juice : mass liquid key=lemon-juice
calamansi = calamondin
calamansi juice : mass liquid
candied citron : mass key=candied-citron
candied lemon peel : mass
candied mixed peel : mass key=candied-peel
candied orange
candied orange peel : mass
candied peel : mass key=candied-peel
canned mandarin orange : key=mandarin
cara cara orange : kind=orange
chenpi : mass group=spice key=dried-orange-peel
citron : mass key=candied-citron
citrus : key=citrus-fruit
citrus fruit : key=citrus-fruit
citrus juice : mass liquid
citrus zest : mass
clementine
clementine juice : mass liquid key=tangerine-juice
clementine zest : mass key=tangerine-zest
dried lime : key=dried-lime
dried mandarin peel : mass group=spice key=dried-orange-peel
dried orange peel : mass group=spice key=dried-orange-peel
dried tangerine peel : mass group=spice key=dried-orange-peel
finger lime
fresh lemon juice : mass liquid key=lemon-juice
fresh lime juice : mass liquid key=lime-juice
fresh orange juice : mass liquid key=orange-juice
freshly squeezed lemon juice : mass liquid key=lemon-juice
freshly squeezed lime juice : mass liquid key=lime-juice
freshly squeezed orange juice : mass liquid key=orange-juice
grapefruit
grapefruit juice : mass liquid
grapefruit zest : mass
grated lemon zest : mass key=lemon-zest
kaffir lime : key=makrut-lime
key lime : kind=lime
key lime juice : mass liquid
kumquat
lemon
lemon half : key=lemon plural=halves
lemon juice = lemon's juice : mass liquid key=lemon-juice
lemon peel : mass key=lemon-zest
lemon pulp : mass
lemon rind : mass key=lemon-zest
lemon slice : key=lemon
lemon twist
lemon wedge : key=lemon
lemon zest = lemon's zest : mass key=lemon-zest
lime
lime half : key=lime plural=halves
lime juice : mass liquid key=lime-juice
lime peel : mass key=lime-zest
lime rind : mass key=lime-zest
lime slice : key=lime
lime wedge : key=lime
lime zest : mass key=lime-zest
limoo amani : key=dried-lime
loomi : key=dried-lime
makrut lime : key=makrut-lime
mandarin
mandarin juice : mass liquid key=tangerine-juice
mandarin orange : key=mandarin
mandarin segment : key=mandarin
mandarin zest : mass key=tangerine-zest
meyer lemon : kind=lemon proper=1
minneola
mixed candied peel : mass key=candied-peel
mixed peel : mass key=candied-peel
navel orange : kind=orange
omani lime : key=dried-lime
orange
orange juice = oj : mass liquid key=orange-juice
orange peel : mass key=orange-zest
orange rind : mass key=orange-zest
orange segment : key=orange
orange slice : key=orange
orange wedge : key=orange
orange zest : mass key=orange-zest
persian dried lime : key=dried-lime proper=1
persian lime : kind=lime proper=1
pink grapefruit : kind=grapefruit
pomelo = pummelo
preserved lemon : kind=lemon
preserved lemon peel : mass
red grapefruit : kind=grapefruit key=ruby-grapefruit
ruby grapefruit : kind=grapefruit key=ruby-grapefruit
satsuma
satsuma juice : mass liquid key=tangerine-juice
seville orange : kind=orange proper=1 key=seville-orange
seville orange juice : mass liquid key=sour-orange-juice
sour orange : kind=orange key=seville-orange
sour orange juice : mass liquid key=sour-orange-juice
sudachi
tangelo
tangerine
tangerine juice : mass liquid key=tangerine-juice
tangerine zest : mass key=tangerine-zest
tinned mandarin : key=mandarin
ugli fruit
unwaxed lemon : key=lemon
unwaxed orange : key=orange
valencia orange : kind=orange proper=1
yuzu : mass
yuzu juice : mass liquid
yuzu peel : mass key=yuzu-zest
yuzu zest : mass key=yuzu-zest

# Berries and currants
@ FOOD noun group=berry
barberry : group=dried-fruit
berry
berry purée : mass
bilberry
blackberry : key=blackberry
blackcurrant = black currant
blueberry
boysenberry
bramble : key=blackberry ambiguous
cloudberry
cranberry
dried goji berry : group=dried-fruit key=goji-berry
elderberry
freeze-dried raspberry : group=dried-fruit
freeze-dried strawberry : group=dried-fruit
fresh cranberry : kind=cranberry
fresh currant
frozen berry : key=frozen-berry
frozen blueberry : kind=blueberry
frozen cranberry : kind=cranberry
frozen mixed berry : key=frozen-berry
frozen raspberry : kind=raspberry
frozen strawberry : kind=strawberry
frozen summer fruit : key=summer-fruit
fruits of the forest : key=summer-fruit
goji berry : group=dried-fruit key=goji-berry
golden raspberry : kind=raspberry
gooseberry
huckleberry
juniper berry : group=spice
lingonberry
loganberry
marionberry
mixed berry
mulberry
raspberry
raspberry purée : mass
redcurrant = red currant
rowan berry
saskatoon : key=saskatoon-berry
saskatoon berry : proper=1 key=saskatoon-berry
sea buckthorn : mass
serviceberry : key=saskatoon-berry
strawberry = strawbs
strawberry purée : mass
summer fruit : key=summer-fruit
tayberry
white currant = whitecurrant
wild blueberry : kind=blueberry
wild strawberry : kind=strawberry
wolfberry : group=dried-fruit key=goji-berry

# Dried fruit
@ FOOD noun group=dried-fruit
candied fruit : key=candied-fruit
crystallised pineapple : mass
currant
date : ambiguous
date paste : mass group=paste
deglet noor : kind=date key=deglet-noor-date
deglet noor date : kind=date proper=2 key=deglet-noor-date
deglet nour : kind=date key=deglet-noor-date
dried apricot
dried banana
dried barberry : key=dried-barberry
dried blueberry
dried cherry : key=dried-cherry
dried coconut : mass group=nut
dried cranberry : key=dried-cranberry
dried currant : key=currant
dried date : key=date
dried fig
dried mango : mass
dried mixed berry
dried mulberry
dried peach
dried persimmon
dried pineapple : mass
dried plum : key=prune
dried sour cherry : key=dried-cherry
dried strawberry
dried tart cherry : key=dried-cherry
dried vine fruit : key=mixed-vine-fruit
fruit leather : mass
glacé fruit : key=candied-fruit
golden raisin : key=sultana
hunza apricot : proper=1
imli : mass group=paste key=tamarind
jumbo raisin : kind=raisin
kokum : mass group=spice
medjool : kind=date key=medjool-date
medjool date : kind=date proper=1 key=medjool-date
mixed candied fruit : key=candied-fruit
mixed vine fruit : key=mixed-vine-fruit
pitted prune : key=prune
prune : key=prune
raisin
seedless raisin : key=raisin
sultana : key=sultana
sweetened dried cranberry : key=dried-cranberry
tamarind : mass group=paste key=tamarind
tamarind block : mass group=paste key=tamarind
tamarind pulp : mass group=paste key=tamarind
vine fruit : key=mixed-vine-fruit
wet tamarind : mass group=paste key=tamarind
zante currant : key=currant proper=1
zereshk : key=dried-barberry

# More fruit
@ FOOD noun group=fruit
ambarella : key=hog-plum
apple chunk : kind=apple key=apple-slice
apple slice : kind=apple key=apple-slice
apple wedge : kind=apple key=apple-slice
aprium : key=plumcot
asian melon : kind=melon proper=1 key=asian-melon
avocado half : kind=avocado plural=halves
babaco
baby banana : kind=banana key=finger-banana
bael
baldwin apple : kind=apple key=jonamac-apple
beach plum
bell apple : key=rose-apple
ber
black sapote : key=sapote
burro banana : kind=banana key=finger-banana
canistel
canned apple : kind=apple key=apple-slice
canned apple slice : kind=apple key=apple-slice
canned crushed pineapple : kind=pineapple key=pineapple-slice
canned fruit cocktail : mass key=fruit-in-juice
canned mixed fruit : mass key=fruit-in-juice
canned peach slice : kind=peach key=peach-slice
canned pineapple chunk : kind=pineapple key=pineapple-slice
canned pineapple slice : kind=pineapple key=pineapple-slice
casaba : kind=melon key=casaba-melon
casaba melon : kind=melon key=casaba-melon
champagne grape : kind=grape key=currant-grape
chikoo : key=chikoo
cox's orange pippin apple : kind=apple key=pippin-apple
crenshaw melon : kind=melon proper=1
crispin apple : kind=apple key=jonamac-apple
currant grape : kind=grape key=currant-grape
dried apple slice : kind=apple key=apple-slice
elstar apple : kind=apple key=jonamac-apple
finger banana : kind=banana key=finger-banana
forelle pear : kind=pear key=seckel-pear
fresh pineapple chunk : kind=pineapple key=pineapple-slice
frozen apple slice : kind=apple key=apple-slice
frozen mango chunk : kind=mango key=mango-chunk
frozen peach : kind=peach key=peach-slice
frozen pineapple chunk : kind=pineapple key=pineapple-slice
fruit in juice : mass key=fruit-in-juice
fruit in syrup : mass key=fruit-in-juice
genip : key=genip
golden apple : key=hog-plum
hog plum : key=hog-plum
ida red apple : kind=apple key=jonamac-apple
jaboticaba
jamun
jonamac apple : kind=apple proper=1 key=jonamac-apple
june plum : key=hog-plum
korean melon : kind=melon key=asian-melon proper=1
lady finger banana : kind=banana key=finger-banana
macoun apple : kind=apple key=jonamac-apple
mamey : key=sapote
mamey sapote : key=sapote
mango cheek : kind=mango key=mango-chunk
mango chunk : kind=mango key=mango-chunk
mango cube : kind=mango key=mango-chunk
mango slice : kind=mango key=mango-chunk
mombin : key=hog-plum
muscadine : kind=grape key=muscadine
muscadine grape : kind=grape key=muscadine
muskmelon = musk melon : kind=melon key=muskmelon
mutsu apple : kind=apple key=jonamac-apple
nance
netted melon : kind=melon key=muskmelon
noni
oriental melon : kind=melon key=asian-melon
paula red apple : kind=apple key=jonamac-apple
peach half in syrup : kind=peach key=peach-slice
peach slice : kind=peach key=peach-slice
pear slice : kind=pear key=pear-slice
pear wedge : kind=pear key=pear-slice
persian melon : kind=melon proper=1
phalsa : group=berry
pineapple piece : kind=pineapple key=pineapple-slice
pineapple slice : kind=pineapple key=pineapple-slice
pineapple spear : kind=pineapple key=pineapple-slice
pippin apple : kind=apple key=pippin-apple
plumcot : key=plumcot
quandong
quenepa : key=genip
red pear : kind=pear key=seckel-pear
rose apple : key=rose-apple
salak : key=salak
santol
sapota : key=chikoo
sapote : key=sapote
scuppernong : kind=grape key=muscadine
seckel pear : kind=pear proper=1 key=seckel-pear
sitaphal : key=custard-apple
sliced peach : kind=peach key=peach-slice
snake fruit : key=salak
sorb apple
sour cherry in syrup : kind=cherry
spanish lime : key=genip proper=1
spartan apple : kind=apple key=jonamac-apple
stayman apple : kind=apple key=jonamac-apple
strawberry half : group=berry kind=strawberry key=strawberry-half plural=halves
strawberry slice : group=berry kind=strawberry key=strawberry-half
sugar baby watermelon : kind=watermelon
thompson grape : kind=grape proper=1
tinned fruit salad : mass key=fruit-in-juice
tropical fruit cocktail : mass key=fruit-in-juice
wax apple : key=rose-apple
white sapote : key=sapote
windfall apple : kind=apple key=jonamac-apple
winesap apple : kind=apple proper=1
worcester apple : kind=apple key=jonamac-apple
@ FOOD noun group=berry
aronia berry : key=aronia-berry
boxberry : key=boxberry
checkerberry : key=boxberry
chokeberry : key=aronia-berry
crowberry
dewberry
hackberry
jostaberry
juneberry
maqui berry
salmonberry
teaberry : key=boxberry
whortleberry : key=bilberry
wild berry
