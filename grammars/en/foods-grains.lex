# Flour, starch, grain, rice, pasta, noodles, pulses, nuts, seeds.

# Wheat flours and meals
@ FOOD noun mass group=flour kind=flour
00 flour : key=double-zero-flour
all-purpose flour = all purpose : key=plain-flour
almond flour : kind=almond key=ground-almonds
almond meal : kind=almond key=ground-almonds
amaranth flour : key=amaranth-flour
ap : key=plain-flour
ap flour : key=plain-flour
arepa flour : key=precooked-cornmeal
atta : kind=flour key=atta
atta flour : kind=flour key=atta
bajra : key=millet-flour
bajra flour : key=millet-flour
baker's flour : key=bread-flour
banana flour : key=banana-flour
barley flour
bean flour : key=pea-flour
besan : key=chickpea-flour
besan flour : key=chickpea-flour
black bean flour : key=pea-flour
blanched almond flour : kind=almond key=ground-almonds
blue corn masa : kind=masa key=blue-corn-masa
blue masa harina : kind=masa key=blue-corn-masa
bread flour : key=bread-flour
brown bread flour : key=brown-flour
brown flour : key=brown-flour
brown rice flour : key=rice-flour
buckwheat flour
cake flour : key=cake-flour
canadian strong flour : key=bread-flour proper=1
carob flour : key=carob-flour
carob powder : key=carob-flour
cassava flour : key=cassava-flour
chapati flour : kind=flour key=atta
chapatti flour : kind=flour key=atta
chestnut flour
chickpea flour : key=chickpea-flour
coarse semolina : key=semolina kind=semolina
coconut flour
dark rye flour : key=rye-flour
dosa batter : group=prepared key=dosa-batter
dosa mix : group=prepared key=dosa-batter
double zero flour = type 00 flour, double o flour, zero zero flour : key=double-zero-flour
durum atta : kind=flour key=atta
durum semolina : kind=semolina key=semolina
durum wheat flour = durum flour
dusting flour : key=flour
einkorn flour : key=einkorn-flour
elubo : key=cassava-flour
emmer flour : key=einkorn-flour
extra-strong flour : key=bread-flour
fava bean flour : key=pea-flour
fine semolina : key=semolina kind=semolina
fine semolina flour : kind=semolina key=semolina
finger millet flour : key=ragi-flour
flour = flours
fresh masa : key=masa
fufu flour : key=cassava-flour
garbanzo bean flour : key=chickpea-flour
garbanzo flour : key=chickpea-flour
gluten flour : key=vital-wheat-gluten
gluten-free all-purpose flour : key=gluten-free-flour
gluten-free baking flour : key=gluten-free-flour
gluten-free bread flour : key=gluten-free-flour
gluten-free flour : key=gluten-free-flour
gluten-free flour blend : key=gluten-free-flour
gluten-free plain flour : key=gluten-free-flour
gluten-free self-raising flour : key=gluten-free-flour
glutinous rice flour : key=glutinous-rice-flour
graham flour
gram flour : key=chickpea-flour
granary flour : key=malted-flour
green banana flour : key=banana-flour
ground hazelnut : key=hazelnut-flour
ground hazelnuts : key=hazelnut-flour
ground pistachios : key=pistachio-flour
ground rice : key=rice-flour
harina p.a.n. style corn flour : key=precooked-cornmeal
hazelnut flour : key=hazelnut-flour
hazelnut meal : key=hazelnut-flour
high-gluten flour : key=bread-flour
high-grade flour : key=bread-flour
high-protein flour : key=bread-flour
idli batter : group=prepared key=dosa-batter
instant flour : key=instant-flour
italian 00 flour : key=double-zero-flour proper=1
jowar : key=sorghum-flour
jowar flour : key=sorghum-flour
kamut flour : key=einkorn-flour
khorasan flour : key=einkorn-flour
kinako : key=soy-flour
lentil flour : key=lentil-flour
light rye flour : key=rye-flour
lupin flour
maida : key=maida
maida flour : key=maida
malted flour : key=malted-flour
malted grain flour : key=malted-flour
malthouse flour : key=malted-flour
masa : key=masa
masa dough : key=masa
masa harina : kind=masa
masarepa : key=precooked-cornmeal
mesquite flour
millet flour : key=millet-flour
mochiko : key=glutinous-rice-flour
moong dal flour : key=lentil-flour
moong flour : key=lentil-flour
oat flour
pasta flour : key=double-zero-flour
pastry flour
pea flour : key=pea-flour
pearl millet flour : key=millet-flour
pistachio flour : key=pistachio-flour
pistachio meal : key=pistachio-flour
pizza flour : key=double-zero-flour
plain flour : key=plain-flour
plain white flour
plain wholemeal flour : key=wholemeal-flour
plantain flour : key=banana-flour
pounded yam flour : key=cassava-flour
precooked cornmeal : key=precooked-cornmeal
pumpernickel flour : key=rye-flour
quick-mixing flour : key=instant-flour
quinoa flour
ragi flour = ragi : key=ragi-flour
rajgira flour : key=amaranth-flour
rava : key=semolina kind=semolina
rawa : key=semolina kind=semolina
rice flour : key=rice-flour
roasted soybean flour : key=soy-flour
roti flour : kind=flour key=atta
rye flour : key=rye-flour
sauce flour : key=instant-flour
seasoned flour
self-raising flour : key=self-raising-flour
self-rising flour : key=self-raising-flour
semolina : kind=semolina key=semolina
semolina flour : kind=semolina key=semolina
shiratamako : key=glutinous-rice-flour
soft flour
sooji : key=semolina kind=semolina
sorghum flour : key=sorghum-flour
soy flour = soya flour : key=soy-flour
spelt flour : key=spelt-flour
sponge flour : key=cake-flour
sticky rice flour : key=glutinous-rice-flour
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
tempura batter mix : key=tempura-flour
tempura flour : key=tempura-flour
tempura mix : key=tempura-flour
tigernut flour
tipo 00 flour : key=double-zero-flour
unbleached all-purpose flour : key=plain-flour
unbleached bread flour : key=bread-flour
unbleached flour : key=plain-flour
unbleached white flour : key=plain-flour
urad dal flour : key=lentil-flour
urad flour : key=lentil-flour
vital wheat gluten = wheat gluten, gluten : key=vital-wheat-gluten
white bread flour : key=bread-flour
white flour : key=plain-flour
white rice flour : key=rice-flour
white spelt flour : key=spelt-flour
white whole wheat flour : key=wholemeal-flour
whole wheat bread flour : key=wholemeal-flour
whole wheat flour = wholewheat flour : key=wholemeal-flour
whole wheat pastry flour
whole-grain flour : key=wholemeal-flour
wholemeal flour : key=wholemeal-flour
wholemeal self-raising flour = self-raising wholemeal flour
wholemeal spelt flour : key=spelt-flour
yam flour : key=cassava-flour

# Starches
@ FOOD noun mass group=starch
arrowroot : key=arrowroot
arrowroot flour : key=arrowroot
arrowroot powder : key=arrowroot
arrowroot starch : key=arrowroot
boba : key=tapioca-pearls
boba pearls : key=tapioca-pearls
bubble tea pearls : key=tapioca-pearls
cassava starch : key=tapioca-starch
cornflour = corn flour : key=cornflour
cornflour slurry : key=cornflour
cornstarch = corn starch : key=cornflour
cornstarch slurry = slurry : key=cornflour
dehydrated potato flakes : key=potato-flakes
farina potato starch : key=potato-starch
fufu
garri = gari
granulated tapioca : key=tapioca
instant mash : key=potato-flakes
instant mashed potato : key=potato-flakes
instant mashed potatoes : key=potato-flakes
instant potato : key=potato-flakes
instant potato flakes : key=potato-flakes
instant tapioca : key=tapioca
kudzu starch : key=rice-starch
kuzu : key=rice-starch
kuzu starch : key=rice-starch
maize starch : key=cornflour
mashed potato flakes : key=potato-flakes
minute tapioca : key=tapioca
modified starch powder
mung bean starch
pearl tapioca : key=tapioca
potato buds : key=potato-flakes
potato flakes : key=potato-flakes
potato flour : key=potato-starch
potato starch : key=potato-starch
powdered potato : key=potato-flakes
quick-cooking tapioca : key=tapioca
rice starch : key=rice-starch
sabudana : key=sago
sago : key=sago
sago pearl : key=sago
sago pearls : key=sago
sweet potato starch
tapioca : key=tapioca
tapioca flour : key=tapioca-starch
tapioca pearls = tapioca pearl : key=tapioca-pearls
tapioca starch : key=tapioca-starch
wheat starch : key=rice-starch

# Grains and meals
@ FOOD noun mass group=grain
amaranth
barley
barley flakes = barley flake : key=barley-flakes
barnyard millet : key=foxtail-millet
beaten rice : group=rice key=poha
black quinoa : key=quinoa
blue cornmeal : key=cornmeal
broken wheat : key=dalia
buckwheat : key=buckwheat
buckwheat groat : key=buckwheat
buckwheat groats : key=buckwheat
bulgar wheat : key=bulgur
bulghur wheat : key=bulgur
bulgur = bulghur, bulgar : key=bulgur
bulgur wheat : key=bulgur
burghul : key=bulgur
chivda : group=rice key=poha
coarse bulgur : key=bulgur
coarse cornmeal : key=cornmeal
coarse oatmeal : kind=oats key=oatmeal
coarse polenta : key=polenta
cooked oatmeal : kind=oats key=oatmeal
cooked quinoa : kind=quinoa
corn grits : key=grits
cornmeal = corn meal : key=cornmeal
couscous = cous cous
cracked wheat : key=bulgur
cream of wheat cereal : key=farina
cream of wheat style farina : key=farina
dalia : key=dalia
emmer : key=farro
farina : key=farina
farro : key=farro
fine bulgur : key=bulgur
fine cornmeal : key=cornmeal
fine oatmeal : kind=oats key=oatmeal
flattened rice : group=rice key=poha
fonio
fox nut : key=makhana
fox nuts : key=makhana
foxtail millet : key=foxtail-millet
freekeh
giant couscous : kind=couscous key=giant-couscous
gluten-free oats : kind=oats
grits : key=grits
hominy grits : key=grits
hulled barley : kind=barley key=pearl-barley
instant grits : key=grits
instant oatmeal : kind=oats key=quick-oats
instant oats : kind=oats key=quick-oats
instant polenta : key=polenta
irish oats : kind=oats key=steel-cut-oats proper=1
israeli couscous : kind=couscous key=giant-couscous
jumbo oats : kind=oats key=rolled-oats
jumbo rolled oats : kind=oats key=rolled-oats
kamut : key=kamut
kasha : key=buckwheat
khorasan wheat : key=kamut
kodo millet : key=foxtail-millet
little millet : key=foxtail-millet
lotus seeds puffed : key=makhana
maftoul : kind=couscous key=giant-couscous
maize meal : key=cornmeal
makhana : key=makhana
makki atta : key=cornmeal
mamra : group=rice key=puffed-rice
mealie meal : key=cornmeal
medium cornmeal : key=cornmeal
medium oatmeal : kind=oats key=oatmeal
microwave popcorn : key=popcorn
millet
millet flakes : key=barley-flakes
moghrabieh : kind=couscous key=giant-couscous
murmura : group=rice key=puffed-rice
oat bran
oat groats : kind=oats key=steel-cut-oats
oatmeal : kind=oats key=oatmeal
oats
old-fashioned oats : kind=oats key=rolled-oats
old-fashioned rolled oats : kind=oats key=rolled-oats
one-minute oats : kind=oats key=quick-oats
pearl barley : kind=barley key=pearl-barley
pearl couscous : kind=couscous key=giant-couscous
pearled spelt : key=spelt
phool makhana : key=makhana
pinhead oatmeal : kind=oats key=oatmeal
pinhead oats : kind=oats key=steel-cut-oats
plain popcorn : key=popcorn
poha : group=rice key=poha
polenta : key=polenta
polenta log : key=polenta
polenta meal : key=cornmeal
popcorn : key=popcorn
popcorn kernels = popcorn kernel : key=popcorn-kernels
popped amaranth : key=puffed-amaranth
popped corn : key=popcorn
popping corn : key=popcorn-kernels
porridge oats = oat porridge, porridge : kind=oats
pot barley : kind=barley key=pearl-barley
prepared polenta : key=polenta
ptitim : kind=couscous key=giant-couscous
puffed amaranth : key=puffed-amaranth
puffed millet : key=puffed-wheat
puffed quinoa : key=puffed-wheat
puffed rice : group=rice key=puffed-rice
puffed wheat : key=puffed-wheat
quick grits : key=grits
quick oats : kind=oats key=quick-oats
quick rolled oats : kind=oats key=quick-oats
quick-cook polenta : key=polenta
quick-cooking grits : key=grits
quick-cooking oats : kind=oats key=quick-oats
quick-cooking rolled oats : kind=oats key=quick-oats
quinoa : key=quinoa
quinoa flakes : key=barley-flakes
ready-made polenta : key=polenta
red quinoa : key=quinoa
rice flakes : group=rice key=poha
rolled oats : kind=oats key=rolled-oats
rye : ambiguous key=rye
rye berries : ambiguous key=rye
rye flake : key=barley-flakes
rye flakes : ambiguous key=rye
rye grain : ambiguous key=rye
salted popcorn : key=popcorn
sorghum
spelt : key=spelt
spelt berries : key=spelt
spelt flakes : key=barley-flakes
spelt grain : key=spelt
steel-cut oats : kind=oats key=steel-cut-oats
stone-ground cornmeal : key=cornmeal
stone-ground grits : key=grits
teff
tri-color quinoa : key=quinoa
tricolour quinoa : key=quinoa
vermicelli upma rava
wheat berries = wheatberries, wheat berry : key=wheat-berries
wheat bran = bran
wheat flakes : key=barley-flakes
wheat grain : key=wheat-berries
wheatgerm = wheat germ
white cornmeal : key=cornmeal
white quinoa : key=quinoa
whole rolled oats : kind=oats key=rolled-oats
whole wheat berries : key=wheat-berries
wholewheat couscous = whole wheat couscous : kind=couscous
yellow cornmeal : key=cornmeal
@ FOOD noun mass group=grain kind=cereal
all-bran style cereal : key=bran-flakes
bran cereal : key=bran-flakes
bran flakes = bran flake : key=bran-flakes
breakfast cereal = cereal
cereal hoops : key=oat-cereal
chocolate cereal : key=oat-cereal
chocolate puff cereal : key=oat-cereal
cinnamon cereal : key=oat-cereal
cinnamon toast cereal : key=oat-cereal
corn flake crumbs : key=cornflakes
corn flakes cereal : key=cornflakes
corn square cereal : key=rice-squares-cereal
cornflake crumbs : key=cornflakes
cornflakes = corn flakes, cornflake, corn flake : key=cornflakes
cornflakes cereal : key=cornflakes
crisped rice cereal = rice cereal : key=crisped-rice-cereal
crispy rice : key=crisped-rice-cereal
crispy rice cereal : key=crisped-rice-cereal
granola : key=granola
honey nut cereal : key=oat-cereal
muesli
o-shaped oat cereal : key=oat-cereal
oat cereal : key=oat-cereal
puffed rice cereal : key=crisped-rice-cereal
rice bubbles : key=crisped-rice-cereal
rice pops : key=crisped-rice-cereal
rice squares cereal = rice square cereal, square rice cereal, cereal squares : key=rice-squares-cereal
shredded wheat : key=shredded-wheat
toasted granola : key=granola
toasted oat cereal : key=oat-cereal
toasted rice cereal : key=crisped-rice-cereal
wheat biscuit : key=shredded-wheat
wheat biscuit cereal : key=shredded-wheat
wheat biscuits : key=shredded-wheat
wheat bran cereal : key=bran-flakes
wheat square cereal : key=rice-squares-cereal

# Rice
@ FOOD noun mass group=rice kind=rice
aged basmati rice : key=basmati-rice
arborio rice = arborio
basmati rice = basmati : key=basmati-rice
bhutanese red rice : key=red-rice
black glutinous rice : key=black-rice
black rice : key=black-rice
black sticky rice : key=black-rice
boil-in-the-bag rice : key=instant-rice
boiled rice : key=cooked-rice
bomba : key=paella-rice
bomba rice : key=paella-rice
broken rice : key=broken-rice
brown basmati rice : key=brown-rice
brown jasmine rice : key=brown-rice
brown rice : key=brown-rice
calasparra rice : key=paella-rice
calrose rice : key=medium-grain-rice
camargue red rice : key=red-rice
carnaroli rice = carnaroli : key=carnaroli-rice
carolina gold rice = carolina rice : proper=2
cauliflower fried rice mix
chicken-flavored rice mix : key=yellow-rice-mix
chinese rice cake : proper=1 key=chinese-rice-cake
coconut rice : group=prepared key=fried-rice
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
egg fried rice : group=prepared key=fried-rice
five-minute rice : key=instant-rice
forbidden rice : key=black-rice
fragrant rice : key=jasmine-rice
fried rice : group=prepared key=fried-rice
garae-tteok : key=korean-rice-cake
glutinous rice : key=sticky-rice
gobindobhog rice : key=sona-masoori-rice
ground toasted rice : key=toasted-rice-powder
hot cooked rice : key=cooked-rice
idli rice : key=parboiled-rice
instant brown rice : key=instant-rice
instant rice : key=instant-rice
instant white rice : key=instant-rice
japanese rice : key=sushi-rice proper=1
japanese short-grain rice : key=sushi-rice proper=1
jasmine rice : key=jasmine-rice
kalijira rice : key=sona-masoori-rice
kerala red rice : key=red-rice
khao khua : key=toasted-rice-powder
kirimochi : key=mochi
korean rice cake = korean rice cakes : proper=1 key=korean-rice-cake
leftover cooked rice : key=cooked-rice
leftover rice : key=cooked-rice
long grain and wild rice : key=wild-rice-mix
long-grain and wild rice mix : key=wild-rice-mix
long-grain brown rice : key=brown-rice
long-grain rice : key=long-grain-rice
long-grain white rice : key=long-grain-rice
matta : key=sona-masoori-rice
matta rice : key=red-rice
medium-grain rice : key=medium-grain-rice
medium-grain white rice : key=medium-grain-rice
mexican rice mix : key=yellow-rice-mix proper=1
microwave rice : key=microwave-rice
microwaveable rice : key=microwave-rice
minute-style rice : key=instant-rice
mochi : key=mochi
nian gao : key=chinese-rice-cake
paella rice : key=paella-rice
parboiled rice = par-boiled rice : key=parboiled-rice
patna rice
pearl rice : key=short-grain-rice
pilau rice : group=prepared key=fried-rice
ponni rice : key=sona-masoori-rice
pouch of cooked rice : key=microwave-rice
pouch rice : key=microwave-rice
precooked rice : key=microwave-rice
pudding rice
quick-cook rice : key=instant-rice
quick-cooking rice : key=instant-rice
ready rice : key=microwave-rice
ready-cooked rice : key=microwave-rice
ready-to-heat rice : key=microwave-rice
red rice : key=red-rice
rice
rice cake : group=cracker noun
rice grits : key=broken-rice
rice ovalettes : key=chinese-rice-cake
rice pilaf mix : key=yellow-rice-mix
risotto rice
saffron rice mix : key=yellow-rice-mix
seasoned sushi rice : key=sushi-rice
sella rice : key=parboiled-rice
short-grain brown rice : key=brown-rice
short-grain rice : key=short-grain-rice
short-grain white rice : key=short-grain-rice
sona masoori rice : key=sona-masoori-rice
sona masuri : key=sona-masoori-rice
spanish rice mix : key=yellow-rice-mix proper=1
steamed rice : key=cooked-rice
sticky rice : key=sticky-rice
sushi rice : key=sushi-rice
sweet glutinous rice : key=sticky-rice
sweet rice : key=sticky-rice
thai fragrant rice : key=jasmine-rice proper=1
thai jasmine rice : key=jasmine-rice proper=1
toasted rice powder : key=toasted-rice-powder
tteok : key=korean-rice-cake
tteokbokki rice cakes : key=korean-rice-cake
valencia rice : key=paella-rice
venus rice : key=black-rice
vialone nano : key=carnaroli-rice
white basmati rice : key=basmati-rice
white rice
wholegrain rice : key=brown-rice
wild rice
wild rice blend : key=wild-rice-mix
wild rice mix = rice mix : key=wild-rice-mix
yellow rice mix = yellow rice : key=yellow-rice-mix
