# Sugar, syrup, sweeteners, chocolate, sweets, jams, toppings for baking.

# Sugar
@ FOOD noun mass group=sugar kind=sugar
10x sugar : key=icing-sugar
beet sugar
brown sugar
cane jaggery
cane sugar : key=raw-sugar
caster sugar : key=caster-sugar
castor sugar : key=caster-sugar
chinese rock sugar : proper=1
cinnamon sugar
coarse sugar
coconut palm sugar : key=coconut-sugar
coconut sugar : key=coconut-sugar
colored sugar
coloured sugar
confectioner's sugar : key=icing-sugar
confectioners sugar : key=icing-sugar
confectioners' sugar : key=icing-sugar
crystal sugar
dark brown sugar
dark muscovado : key=dark-muscovado-sugar
dark muscovado sugar : key=dark-muscovado-sugar
dark soft brown sugar = soft dark brown sugar : key=dark-brown-sugar
date sugar
decorating sugar
decorator's sugar
demerara : key=demerara-sugar
demerara sugar : key=demerara-sugar
dextrose : key=grape-sugar
evaporated cane juice : key=raw-sugar
fondant icing sugar
fructose
gelling sugar
ginger sugar
glucose powder
golden brown sugar
golden cane sugar
golden caster sugar = golden castor sugar
golden granulated sugar
golden icing sugar : key=icing-sugar
granulated sugar
grape sugar : key=grape-sugar
grated jaggery
gula jawa
gula melaka : key=palm-sugar
gur : key=jaggery ambiguous
icing sugar = icing sugar mixture : key=icing-sugar
jaggery : key=jaggery
jaggery powder
jam sugar
jam-setting sugar
japanese black sugar : proper=1
kokuto
lemon sugar
light brown sugar
light muscovado : key=light-muscovado-sugar
light muscovado sugar : key=light-muscovado-sugar
light soft brown sugar : key=light-brown-sugar
lump sugar
malt sugar
maltose
maple sugar
mishri : key=rock-sugar
muscovado : key=muscovado-sugar
muscovado sugar : key=muscovado-sugar
nib sugar
nibbed sugar
non-melting icing sugar
okinawa sugar
palm jaggery
palm sugar : key=palm-sugar
panela
pearl sugar
piloncillo : key=panela
powdered glucose
powdered jaggery
powdered sugar : key=icing-sugar
preserving sugar
pure icing sugar : key=icing-sugar
rapadura
raw cane sugar
raw sugar : key=raw-sugar
rock sugar : key=rock-sugar
royal icing sugar
sanding sugar
snow sugar
soft brown sugar
soft light brown sugar : key=light-brown-sugar
sparkling sugar
spun sugar
sugar = sugars
sugar cube = sugar cubes
sugar lump
sugar nibs
superfine sugar : key=caster-sugar
turbinado : key=turbinado-sugar
turbinado sugar : key=turbinado-sugar
unrefined caster sugar
vanilla sugar
vanilla-flavoured sugar
white granulated sugar
white sugar
yellow rock sugar

# Syrup, honey and treacle
@ FOOD noun mass group=syrup
acacia honey : kind=honey
chilli honey : kind=honey
cinder toffee : group=confection key=honeycomb
clear honey : kind=honey key=clear-honey
clover honey : kind=honey
creamed honey : kind=honey
hokey pokey : group=confection key=honeycomb
honey = honeys
honeycomb : group=confection key=honeycomb
hot honey : kind=honey
liquid honey : kind=honey
local honey : kind=honey
manuka honey : kind=honey
orange blossom honey : kind=honey
raw honey : kind=honey
runny honey : kind=honey key=clear-honey
set honey : kind=honey
squeezy honey : kind=honey
vegan honey : kind=honey
wildflower honey : kind=honey
@ FOOD noun mass group=syrup liquid kind=syrup
agave : key=agave-syrup
agave nectar : key=agave-syrup
agave syrup : key=agave-syrup
almond syrup
apple molasses
apple syrup
barley malt
berry syrup
birch syrup
black treacle : kind=treacle
blackstrap molasses : kind=molasses
blueberry syrup
boiled cider
breakfast syrup
brown rice syrup : key=rice-syrup
cane syrup
caramel syrup
carob molasses : kind=molasses
carob syrup : kind=molasses
cherry syrup
chocolate syrup : group=chocolate
cinnamon syrup
coconut nectar
coconut syrup
coffee syrup
cooking molasses : kind=molasses
corn syrup
coulis : key=raspberry-syrup dish
dark corn syrup
dark molasses : kind=molasses
date honey
date molasses
date syrup : key=date-syrup
demerara syrup : key=sugar-syrup
elderflower cordial
elderflower syrup
falernum
fancy molasses : kind=molasses
fruit coulis
fruit syrup
ginger syrup
glucose : key=glucose-syrup
glucose syrup : key=glucose-syrup
golden invert syrup
golden syrup
gomme : key=sugar-syrup ambiguous
gomme syrup : key=sugar-syrup
grape molasses : kind=molasses key=grape-molasses
grape must syrup : kind=molasses
grenadine
grenadine syrup
hazelnut syrup
honey syrup
inulin syrup
invert sugar : key=invert-sugar-syrup
invert sugar syrup : key=invert-sugar-syrup
juice from the cherries
kithul treacle
korean corn syrup : proper=1
kuromitsu
lavender syrup
light corn syrup
light molasses : kind=molasses
light treacle
liquid glucose : key=glucose-syrup
maple syrup
maple-flavored syrup
maraschino cherry juice
maraschino cherry syrup
mint syrup
molasses : kind=molasses
mulyeot
oligodang
orgeat
orgeat syrup
palm syrup
pancake syrup
passion fruit syrup
pekmez : kind=molasses key=grape-molasses
peppermint syrup
pomegranate molasses : kind=molasses
pomegranate syrup : kind=molasses
pumpkin spice syrup : key=pumpkin-spice-syrup
pumpkin syrup : key=pumpkin-spice-syrup
pure maple syrup
raspberry coulis
raspberry syrup : key=raspberry-syrup
rice malt syrup : key=rice-syrup
rice syrup : key=rice-syrup
rich simple syrup : key=sugar-syrup
rose syrup
silan : key=date-syrup
simple syrup : key=sugar-syrup
sorghum molasses
sorghum syrup
ssal jocheong
stem ginger syrup
stock syrup : key=sugar-syrup
strawberry coulis
strawberry syrup
sugar syrup : key=sugar-syrup
syrup = sirup
syrup from the stem ginger jar
table syrup
tamarind syrup
treacle : kind=treacle
trimoline
unsulphured molasses : kind=molasses
vanilla syrup
white corn syrup
yacon syrup

# Sweeteners
@ FOOD noun mass group=sweetener
allulose
artificial sweetener
aspartame
brown sugar alternative
brown sugar substitute
brown sugar sweetener
erythritol
granulated erythritol
granulated sweetener
isomalt
liquid stevia
lo han guo
monk fruit : key=monk-fruit-sweetener
monk fruit extract
monk fruit sweetener = monkfruit sweetener : key=monk-fruit-sweetener
no-calorie sweetener
powdered erythritol
powdered stevia
powdered sweetener
saccharin
sorbitol
stevia
stevia drops
stevia extract
stevia powder
sucralose
sugar replacement : key=sugar-substitute
sugar substitute : key=sugar-substitute
sweetener = sweeteners
xylitol
zero-calorie sweetener

# Chocolate and cocoa
@ FOOD noun mass group=chocolate kind=chocolate
alkalised cocoa : kind=cocoa
almond bark : key=almond-bark
baker's chocolate : key=cooking-chocolate
baking chocolate : key=cooking-chocolate
baking cocoa : kind=cocoa
bitter chocolate
bittersweet chocolate
black cocoa : kind=cocoa
black cocoa powder : kind=cocoa
cacao : kind=cocoa key=cacao-powder
cacao butter : kind=butter group=fat
cacao paste
cacao powder : kind=cocoa key=cacao-powder
cake covering
candy coating : key=candy-melts
candy melts = candy melt : key=candy-melts
candy wafers
caramel chocolate
chilli chocolate
chocolate = choc, choccy, chocolates
chocolate almond bark
chocolate bark
chocolate candy coating
chocolate coating
chocolate curl
chocolate curls
chocolate custard powder
chocolate drink powder
chocolate drizzle
chocolate flakes
chocolate fudge sauce
chocolate ganache : key=chocolate-ganache
chocolate hail
chocolate hazelnut spread = hazelnut chocolate spread : key=chocolate-hazelnut-spread
chocolate ice cream topping
chocolate jimmies
chocolate malt powder
chocolate melting wafers
chocolate milk powder
chocolate nut spread
chocolate para mesa
chocolate pieces
chocolate sauce : key=chocolate-sauce
chocolate shards
chocolate shaving
chocolate shavings
chocolate shell topping
chocolate spread : key=chocolate-hazelnut-spread
chocolate sprinkles
chocolate strands
chocolate topping
chocolate vermicelli
chocolate-flavoured cake covering
chocolate-flavoured coating
cocoa : kind=cocoa key=cocoa-powder
cocoa butter : kind=butter group=fat
cocoa liquor
cocoa mass
cocoa mix : kind=chocolate
cocoa powder : kind=cocoa key=cocoa-powder
compound chocolate
cooking chocolate : key=cooking-chocolate
couverture : key=couverture-chocolate
couverture chocolate : key=couverture-chocolate
dairy-free chocolate
dairy-free chocolate chips
dark choc
dark chocolate
dark cocoa powder : kind=cocoa
dark cooking chocolate
drinking chocolate : kind=chocolate key=drinking-chocolate
drinking chocolate powder : kind=chocolate
dutch cocoa : kind=cocoa key=dutch-process-cocoa proper=1
dutch-process cocoa = dutch-processed cocoa : kind=cocoa proper=1 key=dutch-process-cocoa
dutch-process cocoa powder : kind=cocoa
dutch-processed cocoa powder : kind=cocoa
fudge sauce
ganache : key=chocolate-ganache dish
german chocolate : proper=1
german sweet chocolate : proper=1
hazelnut chocolate
hazelnut spread : key=chocolate-hazelnut-spread
hot chocolate mix : kind=chocolate
hot chocolate powder : kind=chocolate
hot cocoa mix : kind=chocolate key=drinking-chocolate
hot fudge
hot fudge sauce : key=chocolate-sauce
hot fudge topping : key=chocolate-sauce
hundred percent chocolate
melting wafers
mexican chocolate : proper=1
mexican drinking chocolate : proper=1
milk chocolate
mint chocolate
natural cocoa powder : kind=cocoa
orange chocolate = chocolate orange
orange-flavoured chocolate
plain chocolate : key=dark-chocolate
raw cacao : kind=cocoa
raw cacao powder : kind=cocoa
ruby chocolate
semisweet baking chocolate
semisweet chocolate = semi-sweet chocolate
seventy percent chocolate
seventy percent dark chocolate
sweet baking chocolate
tablet mexican chocolate
unsweetened baking chocolate
unsweetened chocolate
unsweetened cocoa : kind=cocoa
unsweetened cocoa powder : kind=cocoa
vanilla almond bark : key=almond-bark
vanilla candy coating
vegan chocolate
vegan chocolate chips
vegan dark chocolate
white almond bark
white baking chocolate
white chocolate
@ FOOD noun group=chocolate kind=chocolate
after-dinner mint
bittersweet chocolate chip : kind=chip
candy bar
candy-coated chocolate
candy-coated chocolate piece
caramel chocolate bar
caramel nougat bar
choc chip : kind=chip
chocolate bar
chocolate bonbon
chocolate button
chocolate callet
chocolate candy
chocolate candy bar
chocolate candy kiss
chocolate caramel bar
chocolate caramel candy
chocolate chip : kind=chip
chocolate chunk
chocolate coin
chocolate disc
chocolate drop
chocolate drop candy
chocolate egg
chocolate feve
chocolate flake bar
chocolate honeycomb ball
chocolate kiss
chocolate malt ball
chocolate nougat bar
chocolate pistole
chocolate toffee bar
chocolate truffle
chocolate wafer bar
chocolate wafer disc
chocolate-covered caramel
chocolate-covered coffee bean
chocolate-covered espresso bean
coated chocolate candy
cream-filled chocolate egg
dark chocolate bar
dark chocolate button
dark chocolate chip : kind=chip
dark chocolate chunk
honeycomb chocolate bar
malted milk ball
milk chocolate bar
milk chocolate button
milk chocolate candy bar
milk chocolate chip : kind=chip
mini chocolate chip : kind=chip
mini chocolate egg
mini egg
mini peanut butter cup
mini semisweet chocolate chip : kind=chip
miniature chocolate chip : kind=chip
mint chocolate candy
peanut butter chocolate candy
peanut butter chocolate cup
peanut butter cup
peppermint patty
plain chocolate chip : kind=chip
semisweet chip : kind=chip
semisweet chocolate chip : kind=chip
semisweet chocolate chunk
sixty percent chocolate chip : kind=chip
sugar-coated chocolate
toffee chocolate bar
vanilla baking chip : kind=chip
white baking chip : kind=chip
white choc chip : kind=chip
white chocolate button
white chocolate chip : kind=chip
white chocolate chunk
@ FOOD noun group=confection kind=chip
baking chip
butterscotch chip
butterscotch morsel
candy chip
caramel baking bit
caramel bit
caramel chip
cinnamon baking chip
cinnamon chip
english toffee bit : proper=1
mint baking chip
mint chip
peanut butter chip
peanut butter morsel
toffee bit
toffee chip
toffee piece

# Sweets
@ FOOD noun group=confection
almond paste : mass group=paste
angelica candied = candied angelica : mass
anko : mass group=paste
azuki bean paste : mass group=paste
barfi
barley sugar
biscuit spread : mass group=paste
black licorice : mass
boiled sweet
brittle : mass key=peanut-brittle ambiguous
butter mint
buttercream frosting : mass
butterscotch : mass
butterscotch candy
butterscotch sauce : mass group=sauce kind=caramel
butterscotch topping : mass group=sauce kind=caramel
cajeta : mass group=sauce key=dulce-de-leche
cake decoration
candied fruit peel : mass
candied ginger : mass key=crystallised-ginger
candied lemon
candied lemon slice
candied violet petal
candy : ambiguous
candy cane
candy corn : mass
candy eyeball
candy heart
candy sprinkle
candyfloss : mass key=candyfloss
canned caramel : mass group=sauce kind=caramel
canned frosting : mass
caramel : ambiguous
caramel candy : kind=caramel
caramel corn : mass
caramel dessert sauce : mass group=sauce kind=caramel
caramel dip : mass group=sauce kind=caramel
caramel ice cream topping : mass group=sauce kind=caramel
caramel popcorn : mass
caramel sauce : mass group=sauce kind=caramel key=caramel-sauce
caramel square : kind=caramel
caramel topping : mass group=sauce kind=caramel key=caramel-sauce
caramelized nut
chewing gum : mass ambiguous
chewy caramel : kind=caramel
chikki : mass
chocolate frosting : mass
chocolate fudge frosting : mass
cinnamon candy
cinnamon red hots
colored sprinkle
coloured sprinkle
conversation heart
cookie butter : mass group=paste key=cookie-butter
cookie spread : mass group=paste
cotton candy : mass key=candyfloss
cream cheese frosting : mass
crystallised ginger = crystallized ginger : mass key=crystallised-ginger
decorating gel : mass
decorating icing : mass
decorating sprinkle
decorator icing : mass
dragée
drizzle icing : mass
dulce de leche : mass group=sauce key=dulce-de-leche
edible ball
edible decoration
edible eye
edible silver ball
fairy floss : mass key=candyfloss
flower paste : mass
fondant : mass key=fondant
fondant icing : mass key=fondant
frosting : mass dish
fruit gum
fruit pastille
fudge : mass ambiguous dish
ginger in syrup : mass
glacé icing : mass
glaze : mass ambiguous dish
golden marzipan : mass
gulab jamun
gum paste : mass
gumdrop = gum drop
gummi bear
gummy : key=gummy-candy ambiguous
gummy bear
gummy candy : key=gummy-candy
gummy worm
hard butterscotch candy
hard candy
hard peppermint
humbug : ambiguous
hundreds and thousands : mass key=hundreds-and-thousands
hundreds-and-thousand
icing : mass ambiguous dish
icing flower
icing pen : mass
jalebi
jelly baby
jelly bean = jellybean
jelly sweet
jimmy : key=sprinkle
jordan almond
jumbo marshmallow : kind=marshmallow
laddu
large marshmallow : kind=marshmallow
lemon frosting : mass
licorice candy : mass
licorice lace : mass
licorice rope : mass
licorice whip : mass
liquorice = licorice : mass
liquorice allsort : mass
lokum : mass key=turkish-delight
lollipop : ambiguous
lollipop candy
lolly
lotus paste : mass group=paste
lotus seed paste : mass group=paste
marshmallow : dish
marshmallow cream : mass
marshmallow creme : mass key=marshmallow-fluff
marshmallow fluff : mass key=marshmallow-fluff
marshmallow spread : mass key=marshmallow-fluff
marzipan : mass
meringue : group=confection dish key=meringue
meringue kiss : group=confection
meringue nest : group=confection key=meringue
meringue shell : group=confection key=meringue
milk caramel : kind=caramel
milk caramel sauce : mass group=sauce key=dulce-de-leche
mini marshmallow : kind=marshmallow
mini meringue : group=confection
miniature marshmallow : kind=marshmallow
mint candy
modelling chocolate : mass
nonpareil : mass ambiguous
nonpareils : mass key=hundreds-and-thousands
nougat : mass dish
pavlova base : group=confection
pavlova shell : group=confection
peanut brittle : mass key=peanut-brittle
peppermint candy
peppermint candy cane
pistachio marzipan : mass
popcorn ball
popping candy : mass
preserved ginger : mass
rainbow sprinkle
rainbow sprinkles : mass key=hundreds-and-thousands
rasgulla
rasmalai
ready-made frosting : mass
ready-to-roll fondant : mass
ready-to-roll icing : mass key=fondant
red bean paste : mass group=paste key=sweet-bean-paste
red hot
red hot candy
red licorice : mass
rock : mass ambiguous
rock candy : mass
roll-out icing : mass
rolled fondant : mass
royal icing : mass
royal icing mix : mass
salted caramel : mass
salted caramel sauce : mass group=sauce kind=caramel key=caramel-sauce
sesame brittle : mass
silver ball
silver dragée
small marshmallow : kind=marshmallow
soft caramel : kind=caramel
sour gummy
speculoos paste : mass group=paste
speculoos spread : mass group=paste key=cookie-butter
spice drop
sprinkle : ambiguous key=sprinkle
starlight mint
stem ginger : mass key=stem-ginger
stem ginger in syrup : mass key=stem-ginger
strawberry frosting : mass
strawberry lace : mass
sucker
sugar decoration
sugar flower
sugar paste : mass key=fondant
sugar pearl
sugar sprinkle
sugar star
sugar strands : mass
sugared almond
sugarpaste : mass
sweet bean paste : mass group=paste key=sweet-bean-paste
sweet red bean paste : mass group=paste
sweets : mass ambiguous
tinned caramel : mass group=sauce kind=caramel
toffee : ambiguous dish
toffee popcorn : mass
toffee sauce : mass group=sauce kind=caramel
torrone : mass
tubed icing : mass
turkish delight : mass proper=1 key=turkish-delight
turron : mass
vanilla frosting : mass
vegan marshmallow : kind=marshmallow
whipped frosting : mass
white bean paste : mass group=paste
white fondant : mass
white frosting : mass
white icing : mass
white marzipan : mass
wine gum
wrapped caramel : kind=caramel
writing icing : mass

# Jams, jellies, curds
@ FOOD noun mass group=condiment kind=jam
apple butter : kind=butter
apple jelly : kind=jelly
apricot glaze
apricot jam : key=apricot-jam
apricot preserves = apricot preserve : key=apricot-jam
bacon jam
berry jam
bitter orange marmalade : kind=marmalade
black cherry jam
blackberry jam
blackberry jelly : kind=jelly
blackberry preserves
blackcurrant conserve
blackcurrant jam
blueberry jam
blueberry preserves
bramble jelly
caramelised onion chutney : kind=marmalade key=onion-marmalade
caramelised red onion chutney : kind=marmalade
caramelized onion jam : kind=marmalade
cherry conserve
cherry jam
cherry preserves
chili jam
chilli jam
citrus curd : kind=curd
coconut jam
concord grape jelly : kind=jelly
conserve
crab apple jelly : kind=jelly
crabapple jelly : kind=jelly
cranberry jam
currant jelly : kind=jelly
damson jam
fig conserve
fig jam
fig paste
fig preserves
fig spread
fine-cut marmalade : kind=marmalade
fruit butter : kind=butter
fruit curd : kind=curd
fruit glaze
fruit preserves
fruit spread
ginger conserve
ginger jam
ginger marmalade : kind=marmalade
ginger preserve
gooseberry jam
grape jam : kind=jelly
grape jelly : kind=jelly
grapefruit marmalade : kind=marmalade
guava jelly : kind=jelly
gulkand
hot pepper jelly
jalapeño jelly
jalapeño pepper jelly
jam : dish
jam preserves
jelly : kind=jelly dish
kaya : ambiguous
kaya jam
lekvar
lemon curd : kind=curd key=lemon-curd
lemon marmalade : kind=marmalade
lime curd : kind=curd
lime marmalade : kind=marmalade
lingonberry jam
lingonberry preserves
mango jam
marmalade : kind=marmalade dish
membrillo : kind=paste key=membrillo
mint jelly : kind=jelly
mixed berry jam
onion jam
onion marmalade : kind=marmalade key=onion-marmalade
onion relish : kind=marmalade
orange curd : kind=curd key=lemon-curd
orange marmalade : kind=marmalade
passion fruit curd : kind=curd key=lemon-curd
peach jam
peach preserves
pear butter : kind=butter
pepper jelly
pie glaze
pineapple jam
pineapple preserves
plum butter
plum jam
powidl
preserves = preserve : ambiguous
pumpkin butter : kind=butter
quince cheese : kind=paste
quince jelly
quince paste : kind=paste key=membrillo
raspberry curd : kind=curd
raspberry jam : key=raspberry-jam
raspberry jelly : kind=jelly
raspberry preserves = raspberry preserve : key=raspberry-jam
red onion marmalade : kind=marmalade
red pepper jelly
redcurrant jelly = red currant jelly : kind=jelly
rhubarb jam
rose jam : key=rose-petal-jam
rose petal jam : key=rose-petal-jam
seedless blackberry jam
seedless raspberry jam : key=raspberry-jam
seedless raspberry preserves : key=raspberry-jam
seville orange marmalade : kind=marmalade
shredless marmalade : kind=marmalade
sour cherry jam
strawberry glaze
strawberry jam : key=strawberry-jam
strawberry jelly : kind=jelly
strawberry pie glaze
strawberry preserves = strawberry preserve : key=strawberry-jam
sweet chilli jam
tart cherry preserves
thick-cut marmalade : kind=marmalade
tomato jam
