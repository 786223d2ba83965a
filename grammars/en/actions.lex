# What cooks do: the verbs of a recipe, and the nouns that stand for them
# after a light verb ("give it a good stir").
#
# kind=       heat cut mix move add rest chill prove soak marinate season shape
#             coat cover uncover drain wash open set-heat preheat serve garnish
#             taste flip finish store preserve measure
# heats       food is cooked by it
# warms       heat is used, but nothing needs to be cooked through (melt, warm)
# passive     the cook only waits
# light       says little itself: the object or the phrase after it decides
# split       a phrase whose object may stand inside: "bring the milk to the boil"
# ambiguous   also a food, a thing or an everyday word, so it needs a look around
# appliance=  the heat that the verb implies when none is named
# write=      the verb that a written recipe uses in its place
# same=       one key for spellings and for regional names of one action
# action=     (ACTNOUN) the verb that the noun stands for
#
# A phrase inflects its first word; past=, part= and ing= give that word's form.

# ---- heat ---------------------------------------------------------------

@ ACTION verb kind=heat heats passive appliance=oven
bake
bake off
bake through
blind bake
parbake = par-bake
rebake
roast : ambiguous
slow-roast
pot-roast : ambiguous
oven-roast
oven-bake

@ ACTION verb kind=heat heats passive appliance=stove
boil
boil up
boil down
boil off
parboil = par-boil
simmer
simmer down
simmer away
blip : write=simmer
putter : write=simmer
bubble : ambiguous write=simmer
bubble away : write=simmer
blanch
scald
braise
stew : ambiguous
casserole : ambiguous
bring to the boil : past=brought part=brought split same=bring-to-the-boil
bring to a boil : past=brought part=brought split same=bring-to-the-boil
bring up to the boil : past=brought part=brought split same=bring-to-the-boil write=bring-to-the-boil
bring up to a boil : past=brought part=brought split same=bring-to-the-boil write=bring-to-a-boil
bring back to the boil : past=brought part=brought split same=bring-back-to-the-boil
bring back to a boil : past=brought part=brought split same=bring-back-to-the-boil
bring to a rolling boil : past=brought part=brought split
bring to a simmer : past=brought part=brought split same=bring-to-a-simmer
bring up to a simmer : past=brought part=brought split same=bring-to-a-simmer write=bring-to-a-simmer
bring to the simmer : past=brought part=brought split same=bring-to-a-simmer write=bring-to-a-simmer
bring back to a simmer : past=brought part=brought split
bring to a bubble : past=brought part=brought split write=bring-to-a-simmer
bring to temperature : past=brought part=brought split
come to the boil : past=came part=come same=bring-to-the-boil write=bring-to-the-boil
come to a boil : past=came part=come same=bring-to-the-boil write=bring-to-a-boil
come up to the boil : past=came part=come same=bring-to-the-boil write=bring-to-the-boil
come up to a boil : past=came part=come same=bring-to-the-boil write=bring-to-a-boil
come to a simmer : past=came part=come same=bring-to-a-simmer write=bring-to-a-simmer
come up to a simmer : past=came part=come same=bring-to-a-simmer write=bring-to-a-simmer
reduce : ambiguous
reduce down : write=reduce
cook down : write=reduce
cook out
bloom

@ ACTION verb kind=heat heats appliance=stove
fry
fry off : write=fry
pan-fry
shallow-fry
stir-fry : ambiguous
dry-fry
refry
sauté : past=sautéed part=sautéed ing=sautéing
sear
sear off : write=sear
pan-sear
reverse-sear
sweat : ambiguous
sweat down : write=sweat
sweat off : write=sweat
brown : ambiguous
brown off : write=brown
brown up : write=brown
griddle : ambiguous
toast : ambiguous
toast off : write=toast
dry-toast
dry-roast
caramelise : same=caramelise
caramelize : same=caramelise
render
render down : write=render
render out : write=render
scramble
poach
coddle
wilt
wilt down : write=wilt
cook off : write=cook
flash-fry
temper
flambé : past=flambéed part=flambéed ing=flambéing

@ ACTION verb kind=heat heats
cook
cook up : write=cook
cook through
precook = pre-cook
finish cooking
overcook
undercook
reheat = re-heat
heat through
crisp : ambiguous
crisp up
colour : ambiguous same=colour
color : ambiguous same=colour
char : past=charred part=charred ing=charring ambiguous
blacken
blister
scorch
singe : ing=singeing
burn : past=burned part=burnt ambiguous
torch : ambiguous
blowtorch : ambiguous
puff up

@ ACTION verb kind=heat heats appliance=grill
grill : ambiguous
grill off : write=grill
broil
gratinate
gratiné : past=gratinéed part=gratinéed ing=gratinéing

@ ACTION verb kind=heat heats
barbecue = barbeque, bbq : appliance=barbecue ambiguous
spit-roast : appliance=barbecue
deep-fry : appliance=fryer
double-fry : appliance=fryer
twice-fry : appliance=fryer write=deep-fry

@ ACTION verb kind=heat heats passive
smoke : appliance=smoker ambiguous
hot-smoke : appliance=smoker
steam : appliance=steamer ambiguous
pressure-cook : appliance=pressure-cooker
slow-cook : appliance=slow-cooker
sous-vide : past=sous-vided part=sous-vided ing=sous-viding appliance=water-bath ambiguous
air-fry = airfry : appliance=air-fryer
microwave : appliance=microwave ambiguous
nuke : appliance=microwave write=microwave
zap : appliance=microwave write=microwave
ping : appliance=microwave write=microwave ambiguous

@ ACTION verb kind=heat warms
heat : ambiguous
heat up : write=heat
warm : ambiguous
warm up : write=warm
warm through
melt
melt down : write=melt
soften : ambiguous
loosen up : write=loosen
thicken
thicken up : write=thicken
keep warm : past=kept part=kept split passive
hold : past=held part=held passive ambiguous
dissolve

# ---- setting the heat ----------------------------------------------------

@ ACTION verb kind=preheat passive
preheat = pre-heat
get the oven on : past=got part=got ing=getting appliance=oven write=preheat-the-oven
get your oven on : past=got part=got ing=getting appliance=oven write=preheat-the-oven
pop the oven on : appliance=oven write=preheat-the-oven
put the oven on : past=put part=put ing=putting appliance=oven write=preheat-the-oven
turn the oven on : appliance=oven write=preheat-the-oven
turn on the oven : appliance=oven write=preheat-the-oven
switch the oven on : appliance=oven write=preheat-the-oven
whack the oven on : appliance=oven write=preheat-the-oven
fire up : split

@ ACTION verb kind=set-heat
set : past=set part=set ing=setting ambiguous
turn up : split
turn down : split
turn on : split
turn off : split
turn the heat up : write=increase-the-heat
turn up the heat : write=increase-the-heat
turn the heat down : write=reduce-the-heat
turn down the heat : write=reduce-the-heat
turn it right down : write=reduce-the-heat
turn the heat off
turn off the heat : write=turn-the-heat-off
turn the oven down
turn the oven up
turn the oven off
increase the heat
raise the heat : write=increase-the-heat
up the heat : write=increase-the-heat
bring the heat up : past=brought part=brought write=increase-the-heat
bring the heat down : past=brought part=brought write=reduce-the-heat
take the heat down : past=took part=taken write=reduce-the-heat
lower the heat : write=reduce-the-heat
reduce the heat
drop the heat : write=reduce-the-heat
knock the heat down : write=reduce-the-heat
kill the heat : write=turn-the-heat-off
cut the heat : past=cut part=cut ing=cutting write=turn-the-heat-off
reduce to a simmer : split
drop to a simmer : split write=reduce-to-a-simmer
lower to a simmer : split write=reduce-to-a-simmer
turn down to a simmer : split write=reduce-to-a-simmer
knock back to a simmer : split write=reduce-to-a-simmer
take down to a simmer : past=took part=taken split write=reduce-to-a-simmer
crank : write=increase ambiguous
crank up : split write=turn-up
whack up : split write=turn-up
dial up : split write=turn-up
dial down : split write=turn-down
dial back : split write=turn-down
ramp up : split write=turn-up
switch on : split write=turn-on
switch off : split write=turn-off
light : past=lit part=lit ambiguous
ignite

# ---- cut -----------------------------------------------------------------

@ ACTION verb kind=cut
cut : past=cut part=cut ing=cutting ambiguous
cut up : past=cut part=cut ing=cutting split
cut off : past=cut part=cut ing=cutting split
cut out : past=cut part=cut ing=cutting split
cut into : past=cut part=cut ing=cutting split
cut in half : past=cut part=cut ing=cutting split write=halve
cut in two : past=cut part=cut ing=cutting split write=halve
cut away : past=cut part=cut ing=cutting split
chop
chop up : split write=chop
chop off : split
rough-chop
hand-chop
slice : ambiguous
slice up : split write=slice
slice off : split
dice : ambiguous
dice up : split write=dice
mince : ambiguous
grate
shred
shave
julienne : past=julienned part=julienned ing=julienning ambiguous
chiffonade : ambiguous
halve
quarter : ambiguous
cube : ambiguous
section : ambiguous
segment : ambiguous
divide
divide up : split write=divide
separate
split : past=split part=split ing=splitting
portion : ambiguous
portion out : split write=portion
portion up : split write=portion
carve
joint : ambiguous
spatchcock
butterfly : ambiguous
fillet = filet : ambiguous
debone
bone : ambiguous
bone out : split write=bone
trim
trim off : split
top : ambiguous
top and tail : past=topped part=topped ing=topping
peel : ambiguous
peel off : split
peel away : split
skin : ambiguous
shell : ambiguous
shuck
hull : ambiguous
husk : ambiguous
pod : ambiguous
core : ambiguous
seed : ambiguous
deseed = de-seed
stone : ambiguous
destone = de-stone
pit : ambiguous
devein
scale : ambiguous
gut : ambiguous
pluck
zest : ambiguous
score : ambiguous
slash
slit : past=slit part=slit ing=slitting ambiguous
snip
tear : past=tore part=torn ambiguous
tear up : past=tore part=torn split write=tear
rip : write=tear
rip up : split write=tear
crumble : ambiguous
crumble up : split write=crumble
crumble in : split write=crumble
flake : ambiguous
break : past=broke part=broken ing=breaking
break up : past=broke part=broken split
break off : past=broke part=broken split
break into : past=broke part=broken split
break apart : past=broke part=broken split
snap : ambiguous
crush
mash : ambiguous
mash up : split write=mash
smash : write=crush
smash up : split write=crush
smush : write=mash
squash : write=crush ambiguous
squish : write=press
bash : write=crush
bash up : split write=crush
bruise
pound : ambiguous
pound out : split write=pound
beat out : past=beat part=beaten split
flatten
flatten out : split write=flatten
tenderise : same=tenderise
tenderize : same=tenderise
grind : past=ground part=ground ambiguous
grind up : past=ground part=ground split write=grind
mill : ambiguous
crack : ambiguous
hack up : split write=chop
pull apart : split
pull off : split ambiguous
shred up : split write=shred
pick : ambiguous
pick off : split
strip : ambiguous
spiralise : same=spiralise
spiralize : same=spiralise
rice : ambiguous
prick
pierce
poke : write=prick
stab : write=prick
dock : ambiguous
nick

# ---- mix -----------------------------------------------------------------

@ ACTION verb kind=mix
mix : ambiguous
mix up : split write=mix
mix together : split
mix through : split
stir
stir in : split
stir through : split
stir together : split
stir up : split write=stir
keep stirring : past=kept part=kept write=stir
stir around : split write=stir
give a stir : past=gave part=given split write=stir
whisk : ambiguous
whisk up : split write=whisk
whisk together : split
whisk over
keep whisking : past=kept part=kept write=whisk
beat : past=beat part=beaten
beat together : past=beat part=beaten split
beat up : past=beat part=beaten split write=beat
whip
whip up : split write=whip
fold : ambiguous
fold in : split
fold through : split
fold together : split
cream : ambiguous
cream together : split
rub in : split
rub together : split
cut in : past=cut part=cut ing=cutting split
combine
incorporate
blend : ambiguous
blend up : split write=blend
blend together : split
blitz : write=blend
blitz up : split write=blend
whizz = whiz : past=whizzed part=whizzed ing=whizzing write=blend
whizz up = whiz up : past=whizzed part=whizzed ing=whizzing split write=blend
zizz : write=blend
zhuzz = zhuzh, zhoosh : write=blend
buzz : write=blend
buzz up : split write=blend
pulse : ambiguous
process : ambiguous
purée : past=puréed part=puréed ing=puréeing ambiguous
liquidise : same=liquidise write=blend
liquidize : same=liquidise write=blend
emulsify
homogenise : same=homogenise
homogenize : same=homogenise
swirl
swirl in : split
swirl through : split
marble : ambiguous
agitate
shake : past=shook part=shaken
shake up : past=shook part=shaken split write=shake
toss
toss together : split
toss through : split
toss around : split write=toss
turn through : split write=toss
jumble : write=toss
tumble : write=toss
muddle
knead
knead in : split
knead together : split
work : ambiguous
work in : split
work together : split
bring together : past=brought part=brought split
come together : past=came part=come ambiguous
pull together : split write=bring-together
gather : ambiguous
gather together : split write=gather
massage
massage in : split write=massage
squidge : write=mix
scrunch
scrunch up : split write=scrunch
scrape down : split
loosen
let down : past=let part=let ing=letting split write=loosen
slacken : write=loosen
thin : ambiguous
thin out : split write=thin
thin down : split write=thin
water down : split write=thin
dilute
slake
lighten
bind : past=bound part=bound
mount : ambiguous
mellow : ambiguous
break down : past=broke part=broken ambiguous
aerate
macerate : kind=soak
froth
froth up : split write=froth
foam : ambiguous

# ---- add -----------------------------------------------------------------

@ ACTION verb kind=add
add
add in : split write=add
add back : split
add back in : split write=add-back
go in with : past=went part=gone ing=going write=add
come in with : past=came part=come write=add
lob : write=add
dump : write=add
fling : past=flung part=flung write=add
sling : past=slung part=slung write=add
sneak in : split write=add
pour
pour in : split
pour out : split
pour off : split kind=drain
glug : write=pour ambiguous
slosh : write=pour
splash in : split write=add
splash : write=add ambiguous
tip : ambiguous
tip out : split
ladle : ambiguous
spoon : ambiguous
dollop : ambiguous
drizzle : ambiguous
trickle
dribble : write=drizzle
squeeze
squeeze in : split
squeeze out : split kind=drain
squirt : ambiguous
juice : ambiguous
sift
sift in : split
sieve : ambiguous
sprinkle
scatter
shower : write=sprinkle ambiguous
rain in : split write=sprinkle
crack in : split
break in : past=broke part=broken split
melt in : split kind=mix
grate in : split
deglaze : appliance=stove
top up : split
fill
fill up : split write=fill
load : write=fill
load up : split write=fill
pack : ambiguous
stuff : ambiguous
sandwich : ambiguous
sandwich together : split
layer : ambiguous
layer up : split write=layer
build up : past=built part=built split
sweeten
sour : ambiguous
feed : past=fed part=fed
inject
return : kind=move
stud
lard : ambiguous

@ ACTION verb light
chuck : write=add kind=add
throw : past=threw part=thrown write=add kind=add
bung : write=put kind=move
pop : write=put kind=move ambiguous
whack : write=put kind=move
stick : past=stuck part=stuck write=put kind=move ambiguous
shove : write=put kind=move
slap : write=put kind=move
plop : write=put kind=move
plonk : write=put kind=move
plunk : write=put kind=move
bang : write=put kind=move
lay : past=laid part=laid kind=move
place : kind=move ambiguous
put : past=put part=put ing=putting kind=move
put back : past=put part=put ing=putting split kind=move
get : past=got part=got ing=getting
give : past=gave part=given
go : past=went part=gone
do : past=did part=done
make : past=made part=made
make up : past=made part=made split kind=mix ambiguous
have : past=had part=had
take : past=took part=taken
use : ambiguous
let : past=let part=let ing=letting
keep : past=kept part=kept
leave : past=left part=left kind=rest
bring : past=brought part=brought
run : past=ran part=run ing=running
start : ambiguous
start off : ambiguous
finish off : kind=finish write=finish
turn : ambiguous
grab : write=take
whip out : write=take-out kind=move
knock up : write=make
rustle up : write=make
throw together : past=threw part=thrown write=make split
continue : ambiguous
carry on : ambiguous
repeat : ambiguous
prepare
prep : write=prepare
ready : write=prepare ambiguous
get ready : past=got part=got ing=getting write=prepare split

# ---- move ----------------------------------------------------------------

@ ACTION verb kind=move
transfer : past=transferred part=transferred ing=transferring
move : ambiguous
remove
take out : past=took part=taken split write=remove ambiguous
take off : past=took part=taken split write=remove ambiguous
take off the heat : past=took part=taken split write=remove-from-the-heat
take from the heat : past=took part=taken split write=remove-from-the-heat
take it off the heat : past=took part=taken write=remove-from-the-heat
remove from the heat : split
come off the heat : past=came part=come write=remove-from-the-heat
pull off the heat : split write=remove-from-the-heat
slide off the heat : past=slid part=slid split write=remove-from-the-heat
pull out : split write=remove
pull : ambiguous
fish out : split write=remove
fish them out = fish em out, fish those out : write=remove-them
fish it out = fish that out : write=remove-it
lift
lift out : split write=remove
lift off : split
scoop : ambiguous
scoop out : split
scoop up : split write=scoop
hoick out = hoik out : split write=remove
whip off : split write=remove
whisk off : split write=remove
discard
throw away : past=threw part=thrown split write=discard
throw out : past=threw part=thrown split write=discard
chuck away : split write=discard
bin : write=discard ambiguous
ditch : write=discard ambiguous
get rid of : past=got part=got ing=getting write=discard
set out : past=set part=set ing=setting split
lay out : past=laid part=laid split
line up : split
arrange
nestle
tuck in : split ambiguous
tuck under : split
position : ambiguous
lower : ambiguous
drop : ambiguous
slide : past=slid part=slid
slip : ambiguous
submerge : kind=soak
spread out : past=spread part=spread split
space out : split
push : ambiguous
push aside : split
push down : split write=press-down
pile : ambiguous
pile up : split write=pile
stack : ambiguous
decant
invert
turn out : split ambiguous
flip out : split write=turn-out
ease out : split
unmould : same=unmould
unmold : same=unmould
demould : same=unmould
release : ambiguous
prise : same=prise
pry : same=prise
hang : past=hung part=hung kind=drain passive
return to the heat : split
put back on the heat : past=put part=put ing=putting split write=return-to-the-heat

@ ACTION verb kind=flip
flip : write=turn
flip over : split write=turn-over
turn over : split
turn around : split
rotate
baste
jiggle : write=shake
rock : ambiguous
move around : split write=turn
swap round : split write=swap
swap

# ---- rest, chill, prove, soak, marinate, season --------------------------

@ ACTION verb kind=rest passive
rest : ambiguous
set aside : past=set part=set ing=setting split
put aside : past=put part=put ing=putting split write=set-aside
put to one side : past=put part=put ing=putting split write=set-aside
pop to one side : split write=set-aside
set to one side : past=set part=set ing=setting split write=set-aside
leave aside : past=left part=left split write=set-aside
leave to one side : past=left part=left split write=set-aside
leave to rest : past=left part=left split
leave to stand : past=left part=left split
leave to sit : past=left part=left split write=leave-to-stand
let rest : past=let part=let ing=letting split write=rest
let stand : past=let part=let ing=letting split write=leave-to-stand
let sit : past=let part=let ing=letting split write=leave-to-stand
stand : past=stood part=stood ambiguous write=rest
sit : past=sat part=sat ing=sitting write=rest ambiguous
settle : ambiguous write=rest
relax
reserve
hold back : past=held part=held split write=reserve
keep back : past=kept part=kept split write=reserve
save : ambiguous write=reserve
wait : ambiguous
cool
cool down : split write=cool
cool off : split write=cool
leave to cool : past=left part=left split
let cool : past=let part=let ing=letting split write=leave-to-cool
come to room temperature : past=came part=come split
bring to room temperature : past=brought part=brought split
come up to room temperature : past=came part=come write=bring-to-room-temperature
bring up to room temperature : past=brought part=brought split write=bring-to-room-temperature
dry : ambiguous
air-dry
dry out : split
dehydrate
mature : ambiguous
age : ambiguous

@ ACTION verb kind=chill passive
chill
chill down : split write=chill
refrigerate
fridge : write=refrigerate ambiguous
freeze : past=froze part=frozen
freeze down : past=froze part=frozen split write=freeze
refreeze : past=refroze part=refrozen
ice : ambiguous
shock : ambiguous
refresh
firm up : split
set up : past=set part=set ing=setting ambiguous
leave to set : past=left part=left split
solidify
thaw
thaw out : split write=thaw
defrost
churn

@ ACTION verb kind=prove passive
prove : past=proved part=proven
proof : ambiguous
rise : past=rose part=risen ambiguous
leave to rise : past=left part=left split
leave to prove : past=left part=left split
let rise : past=let part=let ing=letting split write=leave-to-rise
let prove : past=let part=let ing=letting split write=leave-to-prove
ferment
double in size
knock back : split kind=shape
knock down : split kind=shape write=knock-back
punch down : split kind=shape
deflate : kind=shape

@ ACTION verb kind=soak passive
soak
steep
infuse
brew : ambiguous
rehydrate
reconstitute
plump up : split
plump : ambiguous
hydrate
desalt
dunk : write=dip
leave to soak : past=left part=left split
leave to infuse : past=left part=left split
leave to steep : past=left part=left split

@ ACTION verb kind=marinate passive
marinate
marinade : write=marinate ambiguous
brine : ambiguous
dry-brine
cure : ambiguous
pickle : ambiguous
salt down : split

@ ACTION verb kind=season
season : ambiguous
season up : split write=season
salt : ambiguous
pepper : ambiguous
spice : ambiguous
spice up : split write=spice
flavour : ambiguous same=flavour
flavor : ambiguous same=flavour
adjust
adjust the seasoning
check the seasoning
correct the seasoning : write=adjust-the-seasoning
rub : ambiguous
dress : ambiguous
acidulate

@ ACTION verb kind=taste
taste : ambiguous
taste for seasoning
have a taste : past=had part=had write=taste
try : ambiguous
check
test
probe : ambiguous
temp : write=check-the-temperature ambiguous
smell : past=smelled part=smelt
feel : past=felt part=felt
tap : ambiguous

# ---- shape, coat, cover --------------------------------------------------

@ ACTION verb kind=shape
shape : ambiguous
form : ambiguous
mould : ambiguous same=mould
mold : ambiguous same=mould
roll : ambiguous
roll out : split
roll up : split
re-roll = reroll
unroll
stretch
stretch out : split write=stretch
press : ambiguous
press down : split
press out : split
pat : ambiguous
pat down : split
pipe : ambiguous
pipe out : split write=pipe
crimp
pinch : ambiguous
pinch together : split
flute : ambiguous
seal
seal up : split write=seal
fold over : split
fold up : split
fold in half : split
laminate
tuck
wrap
wrap up : split write=wrap
wrap around : split
enclose
parcel up : split write=wrap
tie : ing=tying
tie up : ing=tying split write=tie
truss
skewer : ambiguous
thread : ambiguous
plait : ambiguous
braid : ambiguous
twist : ambiguous
coil
curl : ambiguous
bend : past=bent part=bent
cup : ambiguous
round : ambiguous
ball up : split write=roll-into-a-ball
smooth : ambiguous
smooth out : split write=smooth
level : past=leveled part=levelled ing=levelling ambiguous
level off : past=leveled part=levelled ing=levelling split write=level
even out : split write=level
quenelle : ambiguous
assemble
build : past=built part=built
construct
hollow out : split
make a well
line : ambiguous kind=coat

@ ACTION verb kind=coat
coat : ambiguous
dip : ambiguous
dredge
dust : ambiguous
dust off : split
flour : ambiguous
bread : ambiguous
crumb : ambiguous
breadcrumb : ambiguous
pané : past=panéed part=panéed ing=panéing
batter : ambiguous
brush : ambiguous
brush off : split
egg-wash : ambiguous
glaze : ambiguous
slather
smear
spread : past=spread part=spread ambiguous
lather : write=spread
daub : write=spread
dab : ambiguous
dot : ambiguous
butter : ambiguous
butter up : split write=butter
grease : ambiguous
oil : ambiguous
oil up : split write=oil
spray : ambiguous
spritz
mist : ambiguous
frost : ambiguous
ice over
enrobe
blanket : ambiguous
paint : write=brush ambiguous
rub down : split
bathe : write=coat
nappé : past=nappéed part=nappéed ing=nappéing write=coat

@ ACTION verb kind=cover
cover : ambiguous
cover up : split write=cover
put the lid on : past=put part=put ing=putting write=cover
pop the lid on : write=cover
pop a lid on : write=cover
put a lid on : past=put part=put ing=putting write=cover
whack the lid on : write=cover
tent : ambiguous
foil : ambiguous
cling-film : write=cover
drape

@ ACTION verb kind=uncover
uncover
unwrap : past=unwrapped part=unwrapped ing=unwrapping
take the lid off : past=took part=taken write=uncover
remove the lid : write=uncover
lift the lid : write=uncover
take the foil off : past=took part=taken write=uncover
remove the foil : write=uncover

# ---- drain, wash, open ---------------------------------------------------

@ ACTION verb kind=drain
drain : ambiguous
drain off : split
drain away : split write=drain
strain
strain off : split write=strain
strain out : split write=strain
pass : ambiguous
skim
skim off : split
spoon off : split
press dry : split
pat dry : split
squeeze dry : split
dry off : split write=pat-dry
blot
mop up : split write=blot
wring : past=wrung part=wrung
wring out : past=wrung part=wrung split
spin : past=spun part=spun
spin dry : past=spun part=spun split
degrease
defat : past=defatted part=defatted ing=defatting
degorge
filter : ambiguous
clarify

@ ACTION verb kind=wash
wash : ambiguous
wash off : split
rinse : ambiguous
rinse off : split write=rinse
rinse out : split
scrub
wipe
wipe out : split
wipe down : split
wipe off : split
clean : ambiguous
clean up : split
sterilise : same=sterilise
sterilize : same=sterilise
sanitise : same=sanitise
sanitize : same=sanitise
scrape : ambiguous
scrape off : split
scrape out : split
scrape up : split

@ ACTION verb kind=open
open
open up : split write=open
unpack
uncork
pop open : split write=open
crack open : split write=open
unseal

# ---- serve, garnish, finish, store, preserve, measure --------------------

@ ACTION verb kind=serve
serve
serve up : split write=serve
dish up : split write=serve
dish out : split write=serve
plate : ambiguous write=serve
plate up : split write=serve
share out : split write=divide
hand round : split write=serve
dig in : ambiguous
tuck into : ambiguous
eat : past=ate part=eaten ambiguous
bring to the table : past=brought part=brought split write=serve

@ ACTION verb kind=garnish
garnish : ambiguous
decorate
top off : split
top it off : write=top
crown : ambiguous
adorn : write=garnish
pretty up : split write=garnish

@ ACTION verb kind=finish
finish : ambiguous
finish off with : write=finish-with
complete : ambiguous
polish off : split
round off : split write=finish

@ ACTION verb kind=store passive
store : ambiguous
pack away : split write=store
box up : split write=store
bag up : split
stash : write=store
batch-freeze
vacuum-seal
vac-pack

@ ACTION verb kind=preserve passive
preserve : ambiguous
can : ambiguous
water-bath can
pressure-can
jar up : split write=jar
jar : ambiguous
bottle : ambiguous
bottle up : split write=bottle
pot up : split
process in a water bath
process in a boiling water bath
confit : past=confited part=confited ing=confiting ambiguous heats
candy : ambiguous
crystallise : same=crystallise
crystallize : same=crystallise
cold-smoke

@ ACTION verb kind=measure
measure : ambiguous
measure out : split write=measure
weigh
weigh out : split write=weigh
count : ambiguous
count out : split write=count
tare
scale up : split
scale down : split
double : ambiguous
double up : split write=double

# ---- nouns for actions ---------------------------------------------------

@ ACTNOUN noun kind=mix
stir = stirring, stir-round : action=stir
quick stir : action=stir
mix = mixing, mix-up : action=mix
toss = tossing : action=toss
whisk = whisking : action=whisk ambiguous
beat = beating : action=beat
whip = whipping : action=whip
fold = folding : action=fold
knead = kneading : action=knead
shake = shaking : action=shake
swirl : action=swirl
shuffle : action=shake
jiggle = wiggle, wobble : action=shake
blend : action=blend ambiguous
blitz = blitzing : action=blend
whizz = whiz : action=blend
pulse : action=pulse ambiguous
buzz : action=blend
zap : action=microwave kind=heat heats
massage : action=massage
scrunch : action=scrunch
muddle : action=muddle
stir-through : action=stir

@ ACTNOUN noun kind=wash
wash = washing : action=wash
rinse = rinsing : action=rinse
scrub = scrubbing : action=scrub
wipe = wipe-down, wipe-round : action=wipe
clean = clean-up : action=clean ambiguous
scrape : action=scrape
bath : action=soak kind=soak ambiguous
soak = soaking : action=soak kind=soak
dunk = dunking : action=dip kind=soak
drain = draining : action=drain kind=drain ambiguous
squeeze = squeezing : action=squeeze kind=drain ambiguous
spin : action=spin kind=drain
press = pressing : action=press kind=shape

@ ACTNOUN noun kind=heat heats
bake : action=bake
roast : action=roast ambiguous
fry = fry-off : action=fry
boil : action=boil ambiguous
simmer : action=simmer
steam : action=steam ambiguous
sear : action=sear
toast = toasting : action=toast ambiguous
sweat : action=sweat ambiguous
grill = grilling : action=grill ambiguous
blast : action=heat
ping : action=microwave
char : action=char
cook : action=cook ambiguous
sizzle : action=fry
flash : action=heat ambiguous
warm = warm-through, warming : action=warm ambiguous
scald : action=scald
blanch = blanching : action=blanch

@ ACTNOUN noun kind=coat
brush = brushing : action=brush ambiguous
coat = coating : action=coat ambiguous
dusting = dust : action=dust
drizzle = drizzling : action=drizzle kind=add ambiguous
sprinkle = sprinkling : action=sprinkle kind=add ambiguous
scattering = scatter : action=scatter kind=add
spray = spraying : action=spray ambiguous
spritz : action=spritz
baste = basting : action=baste kind=flip
glaze : action=glaze ambiguous
rub = rub-down, rubdown : action=rub kind=season ambiguous
grease = greasing : action=grease ambiguous
oiling : action=oil
dip = dipping : action=dip ambiguous
roll = rolling : action=roll kind=shape ambiguous
pat : action=pat kind=shape ambiguous
stretch : action=stretch kind=shape
turn : action=turn kind=flip ambiguous
flip : action=turn kind=flip
tap : action=tap kind=shape ambiguous
bang : action=tap kind=shape
knock : action=tap kind=shape

@ ACTNOUN noun kind=cut
chop = chopping, rough chop : action=chop ambiguous
slice : action=slice ambiguous
trim = trimming : action=trim
peel : action=peel ambiguous
grate = grating : action=grate
grind = grinding : action=grind kind=season ambiguous
twist : action=grind kind=season ambiguous
crack : action=grind kind=season ambiguous
crush : action=crush
bash = bashing, good bash : action=crush
smash = smashing : action=crush
pound = pounding : action=pound ambiguous
mash = mashing : action=mash ambiguous
snip : action=snip
prick : action=prick
poke = prod : action=prick
score = scoring : action=score ambiguous
sieve = sift, sifting : action=sift kind=add
strain = straining : action=strain kind=drain

@ ACTNOUN noun kind=rest passive
rest = resting : action=rest ambiguous
sit : action=stand
chill : action=chill kind=chill
freeze : action=freeze kind=chill
cool = cooling : action=cool
prove = proof, proving : action=prove kind=prove
rise : action=rise kind=prove
marinate = marination : action=marinate kind=marinate

@ ACTNOUN noun kind=taste
taste = tasting, little taste : action=taste ambiguous
check : action=check ambiguous
try : action=taste
season = seasoning : action=season kind=season ambiguous
