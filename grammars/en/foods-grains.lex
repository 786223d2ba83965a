# Flour, starch, grain, rice, pasta, noodles, pulses, nuts, seeds.

# Wheat flours and meals
@ FOOD noun mass group=flour kind=flour
00 flour
all-purpose : ambiguous key=plain-flour
all-purpose flour : key=plain-flour
almond flour : kind=almond key=ground-almonds
almond meal : kind=almond key=ground-almonds
amaranth flour
ap flour : key=plain-flour
arepa flour
atta : kind=flour key=atta
atta flour : kind=flour key=atta
bajra : key=millet-flour
bajra flour
baker's flour : key=bread-flour
banana flour
barley flour
bean flour
besan : key=chickpea-flour
besan flour : key=chickpea-flour
black bean flour
blanched almond flour : kind=almond key=ground-almonds
blue corn masa : kind=masa
blue masa harina : kind=masa
bread flour : key=bread-flour
brown bread flour
brown flour
brown rice flour
buckwheat flour
cake flour : key=cake-flour
canadian strong flour : key=bread-flour proper=1
carob flour
carob powder
cassava flour
chapati flour : kind=flour key=atta
chapatti flour : kind=flour
chestnut flour
chickpea flour : key=chickpea-flour
coarse semolina : key=semolina kind=semolina
coconut flour
dark rye flour
dosa batter : group=prepared
dosa mix : group=prepared
double zero flour = type 00 flour, double o flour, zero zero flour : key=double-zero-flour
durum atta : kind=flour
durum flour : key=durum-wheat-flour
durum semolina : kind=semolina
durum wheat flour : key=durum-wheat-flour
dusting flour : key=flour
einkorn flour
elubo
emmer flour
extra-strong flour : key=bread-flour
fava bean flour
fine semolina : key=semolina kind=semolina
fine semolina flour : kind=semolina
finger millet flour
flour = flours
fresh masa : key=masa
fufu flour
garbanzo bean flour : key=chickpea-flour
garbanzo flour : key=chickpea-flour
gluten : key=vital-wheat-gluten
gluten flour
gluten-free all-purpose flour
gluten-free baking flour
gluten-free bread flour
gluten-free flour : key=gluten-free-flour
gluten-free flour blend : key=gluten-free-flour
gluten-free plain flour : key=gluten-free-flour
gluten-free self-raising flour
glutinous rice flour : key=glutinous-rice-flour
graham flour
gram flour : key=chickpea-flour
granary flour
green banana flour
ground hazelnut
ground hazelnuts : key=hazelnut-flour
ground pistachios
ground rice
hazelnut flour : key=hazelnut-flour
hazelnut meal
high-gluten flour : key=bread-flour
high-grade flour : key=bread-flour
high-protein flour : key=bread-flour
idli batter : group=prepared
instant flour
italian 00 flour : proper=1
jowar : key=sorghum-flour
jowar flour
kamut flour
khorasan flour
kinako
lentil flour
light rye flour
lupin flour
maida
maida flour
malted flour
malted grain flour
malthouse flour
masa : key=masa
masa dough
masa harina : kind=masa
masarepa
mesquite flour
millet flour : key=millet-flour
mochiko : key=glutinous-rice-flour
moong dal flour
moong flour
oat flour
pasta flour
pastry flour
pea flour
pearl millet flour
pistachio flour
pistachio meal
pizza flour : key=double-zero-flour
plain flour : key=plain-flour
plain wholemeal flour : key=wholemeal-flour
plantain flour
pounded yam flour
precooked cornmeal
pumpernickel flour
quick-mixing flour
quinoa flour
ragi : key=ragi-flour
ragi flour : key=ragi-flour
rajgira flour
rava : key=semolina kind=semolina
rawa : key=semolina kind=semolina
rice flour
roasted soybean flour
roti flour : kind=flour
rye flour
sauce flour
seasoned flour
self-raising flour : key=self-raising-flour
self-rising flour : key=self-raising-flour
semolina : kind=semolina
semolina flour : kind=semolina
shiratamako
soft flour
sooji : key=semolina kind=semolina
sorghum flour : key=sorghum-flour
soy flour
soya flour
spelt flour
sponge flour : key=cake-flour
sticky rice flour
strong bread flour : key=bread-flour
strong flour : key=bread-flour
strong plain flour : key=bread-flour
strong white bread flour : key=bread-flour
strong white flour : key=bread-flour
strong wholemeal bread flour : key=wholemeal-flour
strong wholemeal flour : key=wholemeal-flour
suji : key=semolina kind=semolina
superfine almond flour : kind=almond key=ground-almonds
sweet potato flour
sweet rice flour : key=glutinous-rice-flour
teff flour
tempura batter mix
tempura flour
tempura mix
tigernut flour
tipo 00 flour
unbleached all-purpose flour : key=plain-flour
unbleached bread flour : key=bread-flour
unbleached flour : key=plain-flour
unbleached white flour : key=plain-flour
urad dal flour
urad flour
vital wheat gluten : key=vital-wheat-gluten
wheat gluten : key=vital-wheat-gluten
white bread flour : key=bread-flour
white flour : key=plain-flour
white rice flour
white spelt flour
white whole wheat flour : key=wholemeal-flour
whole wheat bread flour : key=wholemeal-flour
whole wheat flour = wholewheat flour : key=wholemeal-flour
whole wheat pastry flour
whole-grain flour : key=wholemeal-flour
wholemeal flour : key=wholemeal-flour
wholemeal self-raising flour = self-raising wholemeal flour
wholemeal spelt flour
yam flour

# Starches
@ FOOD noun mass group=starch
arrowroot : key=arrowroot
arrowroot flour
arrowroot powder : key=arrowroot
arrowroot starch
boba : key=tapioca-pearls
boba pearls
bubble tea pearls
cassava starch
cornflour = corn flour : key=cornflour
cornflour slurry : key=cornflour
cornstarch = corn starch : key=cornflour
cornstarch slurry : key=cornflour
dehydrated potato flakes
fufu
garri = gari
granulated tapioca
instant mash
instant mashed potato
instant mashed potatoes
instant potato
instant potato flakes
instant tapioca
kudzu starch
kuzu
kuzu starch
maize starch : key=cornflour
mashed potato flakes
mung bean starch
pearl tapioca
potato buds
potato flakes
potato flour
potato starch
powdered potato
quick-cooking tapioca
rice starch : key=rice-starch
sabudana : key=sago
sago : key=sago
sago pearl
sago pearls
slurry : key=cornflour ambiguous
sweet potato starch
tapioca
tapioca flour : key=tapioca-starch
tapioca pearls = tapioca pearl : key=tapioca-pearls
tapioca starch : key=tapioca-starch
wheat starch : key=rice-starch

# Grains and meals
@ FOOD noun mass group=grain
amaranth
barley
barley flakes = barley flake
barnyard millet
beaten rice : group=rice key=poha
black quinoa
blue cornmeal
bran : key=wheat-bran
broken wheat
buckwheat : key=buckwheat
buckwheat groat
buckwheat groats : key=buckwheat
bulgar wheat
bulghur wheat
bulgur = bulghur, bulgar : key=bulgur
bulgur wheat
burghul
chivda : group=rice
coarse bulgur
coarse cornmeal
coarse oatmeal : kind=oats
coarse polenta
cooked oatmeal : kind=oats
cooked quinoa : kind=quinoa
corn grits
corn meal : key=cornmeal
cornmeal : key=cornmeal
couscous = cous cous
cracked wheat : key=bulgur
dalia
emmer
farina
farro
fine bulgur
fine cornmeal
fine oatmeal : kind=oats
flattened rice : group=rice key=poha
fonio
fox nut
fox nuts
foxtail millet
freekeh
giant couscous : kind=couscous key=giant-couscous
gluten-free oats : kind=oats
grits
hominy grits
hulled barley : kind=barley
instant grits
instant oatmeal : kind=oats
instant oats : kind=oats
instant polenta
irish oats : kind=oats key=steel-cut-oats proper=1
israeli couscous : kind=couscous key=giant-couscous
jumbo oats : kind=oats
jumbo rolled oats : kind=oats
kamut
kasha : key=buckwheat
khorasan wheat
kodo millet
little millet
maftoul : kind=couscous
maize meal : key=cornmeal
makhana
makki atta
mamra : group=rice
mealie meal
medium cornmeal
medium oatmeal : kind=oats
microwave popcorn
millet
millet flakes
moghrabieh : kind=couscous
murmura : group=rice key=puffed-rice
oat bran
oat groats : kind=oats
oatmeal : kind=oats
oats
old-fashioned oats : kind=oats key=rolled-oats
old-fashioned rolled oats : kind=oats
one-minute oats : kind=oats
pearl barley : kind=barley
pearl couscous : kind=couscous key=giant-couscous
pearled spelt : key=spelt
phool makhana
pinhead oatmeal : kind=oats
pinhead oats : kind=oats key=steel-cut-oats
plain popcorn
poha : group=rice key=poha
polenta
polenta log
popcorn
popcorn kernels = popcorn kernel
popped amaranth
popped corn
popping corn
porridge oats = oat porridge : kind=oats
pot barley : kind=barley
prepared polenta
ptitim : kind=couscous key=giant-couscous
puffed amaranth
puffed millet
puffed quinoa
puffed rice : group=rice key=puffed-rice
puffed wheat
quick grits
quick oats : kind=oats
quick rolled oats : kind=oats
quick-cook polenta
quick-cooking grits
quick-cooking oats : kind=oats
quick-cooking rolled oats : kind=oats
quinoa
quinoa flakes
ready-made polenta
red quinoa
rice flakes : group=rice
rolled oats : kind=oats key=rolled-oats
rye : ambiguous
rye berries
rye flake
rye flakes
rye grain
salted popcorn
sorghum
spelt : ambiguous key=spelt
spelt berries
spelt flakes
spelt grain
steel-cut oats : kind=oats key=steel-cut-oats
stone-ground cornmeal
stone-ground grits
teff
tri-color quinoa
tricolour quinoa
wheat berries = wheatberries, wheat berry
wheat bran : key=wheat-bran
wheat flakes
wheat germ : key=wheatgerm
wheat grain
wheatgerm : key=wheatgerm
white cornmeal
white quinoa
whole rolled oats : kind=oats
whole wheat berries
wholewheat couscous = whole wheat couscous : kind=couscous
yellow cornmeal
@ FOOD noun mass group=grain kind=cereal
bran cereal
bran flakes = bran flake
breakfast cereal : key=breakfast-cereal
cereal : key=breakfast-cereal
cereal hoops
chocolate cereal
chocolate puff cereal
cinnamon cereal
cinnamon toast cereal
corn flake crumbs
corn flakes cereal
corn square cereal
cornflake crumbs
cornflakes = corn flakes, cornflake, corn flake
cornflakes cereal
crisped rice cereal : key=crisped-rice-cereal
crispy rice
crispy rice cereal : key=crisped-rice-cereal
granola
honey nut cereal
muesli
o-shaped oat cereal
oat cereal
puffed rice cereal : key=crisped-rice-cereal
rice cereal : key=crisped-rice-cereal
rice pops
rice square cereal
shredded wheat
toasted granola
toasted oat cereal
toasted rice cereal
wheat biscuit
wheat biscuit cereal
wheat biscuits
wheat bran cereal
wheat square cereal

# Rice
@ FOOD noun mass group=rice kind=rice
aged basmati rice
arborio : key=arborio-rice
arborio rice : key=arborio-rice
basmati : key=basmati-rice
basmati rice : key=basmati-rice
bhutanese red rice
black glutinous rice
black rice
black sticky rice
boil-in-the-bag rice
boiled rice : key=cooked-rice
bomba : ambiguous
bomba rice
broken rice
brown basmati rice
brown jasmine rice
brown rice
calasparra rice
calrose rice
camargue red rice
carnaroli : key=carnaroli-rice
carnaroli rice : key=carnaroli-rice
carolina gold rice : proper=2 key=carolina-gold-rice
carolina rice : key=carolina-gold-rice
cauliflower fried rice mix
chicken-flavored rice mix
chinese rice cake : proper=1 key=chinese-rice-cake
coconut rice : group=prepared
cold cooked rice : key=cooked-rice
cold rice : key=cooked-rice
converted rice : key=parboiled-rice
cooked basmati rice : key=cooked-rice
cooked brown rice : key=cooked-rice
cooked jasmine rice : key=cooked-rice
cooked rice : key=cooked-rice
cooked white rice : key=cooked-rice
day-old rice : key=cooked-rice
easy-cook rice : key=parboiled-rice
five-minute rice
forbidden rice
fragrant rice
garae-tteok
glutinous rice : key=sticky-rice
gobindobhog rice
ground toasted rice
hot cooked rice : key=cooked-rice
idli rice
instant brown rice
instant rice
instant white rice
japanese rice : key=sushi-rice proper=1
japanese short-grain rice : proper=1
jasmine rice : key=jasmine-rice
kalijira rice
kerala red rice
khao khua
kirimochi
korean rice cake = korean rice cakes : proper=1 key=korean-rice-cake
leftover cooked rice : key=cooked-rice
leftover rice : key=cooked-rice
long grain and wild rice
long-grain and wild rice mix
long-grain brown rice
long-grain rice
long-grain white rice
matta : ambiguous
matta rice
medium-grain rice
medium-grain white rice
mexican rice mix : proper=1
microwave rice
microwaveable rice
mochi
nian gao : key=chinese-rice-cake
paella rice
parboiled rice = par-boiled rice : key=parboiled-rice
patna rice
pearl rice
pilau rice : group=prepared
ponni rice
pouch rice
precooked rice
pudding rice
quick-cook rice
quick-cooking rice
ready rice
ready-cooked rice
ready-to-heat rice
red rice
rice
rice cake : group=cracker noun
rice grits
rice mix : key=wild-rice-mix
rice ovalettes
rice pilaf mix
risotto rice
saffron rice mix
seasoned sushi rice
sella rice
short-grain brown rice
short-grain rice
short-grain white rice
sona masoori rice
sona masuri
spanish rice mix : proper=1
steamed rice : key=cooked-rice
sticky rice : key=sticky-rice
sushi rice : key=sushi-rice
sweet glutinous rice
sweet rice : key=sticky-rice
thai fragrant rice : key=jasmine-rice proper=1
thai jasmine rice : proper=1
toasted rice powder
tteok : key=korean-rice-cake
tteokbokki rice cakes
valencia rice
venus rice
vialone nano
white basmati rice
white rice
wholegrain rice
wild rice
wild rice blend
wild rice mix : key=wild-rice-mix
yellow rice : key=yellow-rice-mix
yellow rice mix : key=yellow-rice-mix

# More grain
@ FOOD noun mass group=grain
attiéké
barley groats
chopped rye
cracked rye
diastatic malt powder
groats
maize rice
malt
malted barley
malted wheat flakes
mealie rice
nshima flour : group=flour
oat : ambiguous
rye meal
samp
ugali flour : group=flour
wheat
wheat groats
