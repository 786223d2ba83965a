# The words for units. unit= is the name in tables/units.tsv.
#
# kind=      volume mass count container
# letter     a single letter or sign: only a unit right after a number
# ambiguous  also a food, a verb or an everyday word
# loose      such a word that measures only where a food follows: "two balls of"
# packs      states the size of a package: "two 400 g tins"
# part       counts the food before it too: "3 garlic cloves"
# within     so it does inside one word of the lexicon: "mint leaves"
# vessel     also what one drinks from: "in a cup"
# capital=   the unit of the capital letter
# vesselish  a container that is often but a container: "a 500 ml jar"

# ---- amounts -------------------------------------------------------------

@ UNIT noun kind=volume
teaspoon = tea spoon, tsp, tspn, teasp, teaspoonful : unit=teaspoon
tablespoon = table spoon, tbsp, tbspn, tbs, tbl, tblsp, tblspn, tb, tablespoonful : unit=tablespoon
dessertspoon = dessert spoon, dsp, dstspn, dessertspoonful : unit=dessertspoon
cup = cupful : unit=cup vessel
fluid ounce = fl oz, fl. oz, floz, fluid oz, liquid ounce : unit=fluid-ounce packs
pint = pt : unit=pint
quart = qt : unit=quart
gallon = gal : unit=gallon
gill : unit=gill
millilitre = milliliter, ml, mil, cc : unit=millilitre packs
mill : unit=millilitre ambiguous
centilitre = centiliter, cl : unit=centilitre packs
decilitre = deciliter, dl : unit=decilitre packs
litre = liter, ltr : unit=litre packs
shot = jigger : unit=shot ambiguous loose

@ UNIT noun mass kind=volume letter
t : unit=teaspoon capital=tablespoon
c : unit=cup
l : unit=litre packs
m l = m l s : unit=millilitre packs

@ UNIT noun kind=mass
gram = gramme, gm, gr, grm : unit=gram packs
kilogram = kilogramme, kilo, kg : unit=kilogram packs
milligram = milligramme, mg : unit=milligram
ounce = oz : unit=ounce packs
pound = lb : unit=pound ambiguous packs

@ UNIT noun mass kind=mass letter
g : unit=gram packs
k g : unit=kilogram packs
m g : unit=milligram

@ UNIT noun kind=mass
stick : unit=stick ambiguous part
pat : unit=pat ambiguous loose

@ UNIT noun kind=count
pinch : unit=pinch ambiguous
dash : unit=dash ambiguous
drop : unit=drop ambiguous
handful = fistful, hand-full : unit=handful
clove : unit=clove ambiguous part within
slice : unit=slice ambiguous part within
piece : unit=piece ambiguous
chunk : unit=piece ambiguous loose
lump : unit=piece ambiguous loose
hunk : unit=piece ambiguous loose
thumb = thumb-sized piece, thumb-size piece : unit=piece ambiguous
strip : unit=strip ambiguous part
ribbon : unit=strip ambiguous loose
sprig : unit=sprig part within
stem : unit=sprig ambiguous
stalk : unit=stalk ambiguous part within
rib : unit=stalk ambiguous
spear : unit=stalk ambiguous
head : unit=head ambiguous
bulb : unit=bulb ambiguous
bunch : unit=bunch ambiguous
bouquet : unit=bunch ambiguous
leaf : unit=leaf plural=leaves ambiguous part within
frond : unit=sprig
ear : unit=ear ambiguous loose
cob : unit=ear ambiguous loose
knob : unit=knob ambiguous
nub : unit=knob
nugget : unit=knob ambiguous loose
scoop : unit=scoop ambiguous
sheet : unit=sheet ambiguous
fillet = filet : unit=fillet ambiguous part within
cube : unit=cube ambiguous
wedge : unit=wedge ambiguous part
rasher : unit=rasher part
ball : unit=ball ambiguous loose
block : unit=block ambiguous loose
slab : unit=block ambiguous loose
round : unit=round ambiguous loose
disc = disk : unit=round ambiguous loose
coin : unit=round ambiguous loose
ring : unit=round ambiguous loose
loaf : unit=loaf plural=loaves ambiguous
log : unit=log ambiguous loose
square : unit=square ambiguous loose
bar : unit=bar ambiguous loose
link : unit=link ambiguous loose
rack : unit=rack ambiguous loose
segment : unit=segment ambiguous loose
floret : unit=floret ambiguous part
strand : unit=strand ambiguous loose
pod : unit=pod ambiguous
quill : unit=quill
shaving : unit=shaving ambiguous
curl : unit=shaving ambiguous
nest : unit=nest ambiguous loose
bundle : unit=bundle ambiguous loose

@ UNIT noun kind=container
can : unit=can ambiguous
tin : unit=can ambiguous
packet = pkt : unit=packet
package = pkg : unit=packet
pack : unit=packet ambiguous
pouch : unit=packet
sachet : unit=packet
envelope : unit=packet ambiguous loose
jar : unit=jar ambiguous vesselish
bottle : unit=bottle ambiguous vesselish
bag : unit=bag ambiguous loose vesselish
box : unit=box ambiguous loose vesselish
carton : unit=carton
tub : unit=tub ambiguous loose vesselish
pot : unit=tub ambiguous loose vesselish pot
container : unit=tub ambiguous loose vesselish pot
tube : unit=tube ambiguous loose vesselish
punnet : unit=punnet
clamshell : unit=punnet

# ---- amounts without a size ----------------------------------------------
# They measure nothing: an ingredient said with one has no amount.

@ VAGUEUNIT noun
splash
slosh
glug = good glug, glug glug
drizzle
dribble
trickle
dollop
blob
spoonful = spoon
squirt
squeeze
spritz
sprinkle
sprinkling
scattering
dusting
smattering
shake
grind = grinding
twist
crack
crank
turn
scrape
smear
smidgen = smidge, smidgeon
touch : mass
tad : mass
little : mass ambiguous
bit : ambiguous
lick
whisper
hint
kiss
swirl
dab
daub
schmear
slick
mound
mountain
pile
heap
layer
load
lot
ton
ladleful = ladle
bowlful
glass : plural=glasses ambiguous
glassful
mug : ambiguous
mugful
palmful
capful
panful
potful
jugful
shovelful
swig
nip
lashing
helping
mouthful
plenty : mass ambiguous
shower
snowfall
flurry
film
coating
topping
good amount
fair bit
fair amount
tiny bit
small amount
generous amount

# ---- length --------------------------------------------------------------

@ LENGTHUNIT noun
inch : unit=inch
centimetre = centimeter, centi : unit=centimetre
millimetre = millimeter : unit=millimetre
foot : unit=foot plural=feet ambiguous
metre = meter : unit=metre

@ LENGTHUNIT mass
cm = cms : unit=centimetre
mm = mms : unit=millimetre
ins : unit=inch
ft : unit=foot

@ LENGTHUNIT mass
c m : unit=centimetre
m m : unit=millimetre

@ LENGTHUNIT mass letter
in : unit=inch ambiguous
" : unit=inch

# ---- time ----------------------------------------------------------------

@ TIMEUNIT noun
second = sec : unit=second ambiguous
minute = min : unit=minute
hour = hr : unit=hour
day : unit=day
week = wk : unit=week
fortnight : unit=fortnight
month : unit=month
year = yr : unit=year

@ TIMEUNIT mass letter
s : unit=second
m : unit=minute ambiguous
h : unit=hour
d : unit=day ambiguous

# ---- temperature ---------------------------------------------------------

@ SCALE mass
fahrenheit = farenheit, fahrenheight, fahr : unit=fahrenheit
celsius = celcius, celsus : unit=celsius
centigrade : unit=celsius

@ SCALE mass letter
f : unit=fahrenheit
c : unit=celsius ambiguous

@ DEGREE noun
degree = deg

@ GASMARK mass unit=gas-mark
gas mark = gasmark
gas number = gas no
regulo = regulo mark
gas : ambiguous
mark : ambiguous

# ---- what is counted or paid, and is no measure ---------------------------

@ WHISTLE noun
whistle

@ MONEY noun
dollar
buck
cent
penny = pence
quid : mass
rupee
euro
