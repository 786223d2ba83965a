# The words for units. unit= is the name in tables/units.tsv.
#
# kind=      volume mass count container
# letter     a single letter or sign: only a unit right after a number
# ambiguous  also a food, a verb or an everyday word

# ---- amounts -------------------------------------------------------------

@ UNIT noun kind=volume
teaspoon = tea spoon, tsp, tspn, teasp, teaspoonful : unit=teaspoon
tablespoon = table spoon, tbsp, tbspn, tbs, tbl, tblsp, tblspn, tb, tablespoonful : unit=tablespoon
dessertspoon = dessert spoon, dsp, dstspn, dessertspoonful : unit=dessertspoon
cup = cupful : unit=cup ambiguous
fluid ounce = fl oz, fl. oz, floz, fluid oz, liquid ounce : unit=fluid-ounce
pint = pt : unit=pint
quart = qt : unit=quart
gallon = gal : unit=gallon
gill : unit=gill
millilitre = milliliter, ml, mil, cc : unit=millilitre
mill : unit=millilitre ambiguous
centilitre = centiliter, cl : unit=centilitre
decilitre = deciliter, dl : unit=decilitre
litre = liter, ltr : unit=litre
shot = jigger : unit=shot ambiguous

@ UNIT noun mass kind=volume letter
t : unit=teaspoon
c : unit=cup
l : unit=litre

@ UNIT noun kind=mass
gram = gramme, gm, gr, grm : unit=gram
kilogram = kilogramme, kilo, kg : unit=kilogram
milligram = milligramme, mg : unit=milligram
ounce = oz : unit=ounce
pound = lb : unit=pound ambiguous

@ UNIT noun mass kind=mass letter
g : unit=gram

@ UNIT noun kind=mass
stick : unit=stick ambiguous
pat : unit=pat ambiguous

@ UNIT noun kind=count
pinch : unit=pinch ambiguous
dash : unit=dash ambiguous
drop : unit=drop ambiguous
handful = fistful, hand-full : unit=handful
clove : unit=clove ambiguous
slice : unit=slice ambiguous
piece : unit=piece ambiguous
chunk : unit=piece ambiguous
lump : unit=piece ambiguous
hunk : unit=piece ambiguous
thumb = thumb-sized piece, thumb-size piece : unit=piece ambiguous
strip : unit=strip ambiguous
ribbon : unit=strip ambiguous
sprig : unit=sprig
stem : unit=sprig ambiguous
stalk : unit=stalk ambiguous
rib : unit=rib ambiguous
spear : unit=stalk ambiguous
head : unit=head ambiguous
bulb : unit=bulb ambiguous
bunch : unit=bunch ambiguous
bouquet : unit=bunch ambiguous
leaf : unit=leaf plural=leaves ambiguous
frond : unit=sprig
ear : unit=ear ambiguous
cob : unit=ear ambiguous
knob : unit=knob ambiguous
nub : unit=knob
nugget : unit=knob ambiguous
scoop : unit=scoop ambiguous
sheet : unit=sheet ambiguous
fillet = filet : unit=fillet ambiguous
cube : unit=cube ambiguous
wedge : unit=wedge ambiguous
rasher : unit=rasher
ball : unit=ball ambiguous
block : unit=block ambiguous
slab : unit=block ambiguous
round : unit=round ambiguous
disc = disk : unit=round ambiguous
coin : unit=round ambiguous
ring : unit=round ambiguous
loaf : unit=loaf plural=loaves ambiguous
log : unit=log ambiguous
square : unit=square ambiguous
bar : unit=bar ambiguous
link : unit=link ambiguous
rack : unit=rack ambiguous
segment : unit=segment ambiguous
floret : unit=floret ambiguous
strand : unit=strand ambiguous
pod : unit=pod ambiguous
quill : unit=quill
shaving : unit=shaving ambiguous
curl : unit=shaving ambiguous
nest : unit=nest ambiguous
bundle : unit=bundle ambiguous

@ UNIT noun kind=container
can : unit=can ambiguous
tin : unit=can ambiguous
packet = pkt : unit=packet
package = pkg : unit=packet
pack : unit=packet ambiguous
pouch : unit=packet
sachet : unit=sachet
envelope : unit=sachet ambiguous
jar : unit=jar ambiguous
bottle : unit=bottle ambiguous
bag : unit=bag ambiguous
box : unit=box ambiguous
carton : unit=carton
tub : unit=tub ambiguous
pot : unit=tub ambiguous
tube : unit=tube ambiguous
punnet : unit=punnet
clamshell : unit=punnet
container : unit=tub ambiguous

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
