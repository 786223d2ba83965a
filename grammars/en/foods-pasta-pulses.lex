# Pasta, noodles, wrappers, pulses, nuts, seeds.

# Pasta
@ FOOD noun mass group=pasta kind=pasta
acini di pepe : key=stelline
agnolotti : key=cappelletti
alphabet pasta : key=stelline
angel hair : key=angel-hair-pasta
angel hair pasta : key=angel-hair-pasta
anolini : key=cappelletti
beef ravioli : key=ravioli
bigoli
bow ties : key=bow-tie-pasta
bow-tie noodles : key=bow-tie-pasta
bow-tie pasta : key=bow-tie-pasta
boxed mac and cheese : group=prepared key=macaroni-and-cheese-mix
boxed macaroni and cheese : group=prepared key=macaroni-and-cheese-mix
bucatini : key=bucatini
calamarata
campanelle
canned spaghetti : group=prepared key=canned-spaghetti
cannelloni : key=cannelloni
cannelloni tube : key=cannelloni
cannelloni tubes : key=cannelloni
capellini : key=angel-hair-pasta
cappelletti : key=cappelletti
casarecce
cauliflower gnocchi : key=gnocchi
cavatappi : key=cavatappi
cavatelli
cellentani : key=cavatappi
cheese ravioli : key=ravioli
cheese tortellini : key=tortellini
chickpea pasta : key=gluten-free-pasta
chitarra : key=chitarra
conchiglie
conchiglioni : key=jumbo-shells
cooked pasta : key=cooked-pasta
ditali : key=ditalini
ditalini : key=ditalini
dried pasta : key=dried-pasta
dry pasta : key=dried-pasta
egg pasta
elbow macaroni : key=macaroni
elbow noodles : key=macaroni
elbow pasta : key=macaroni
farfalle : key=farfalle
farfalle pasta : key=farfalle
fettuccine = fettuccini, fettucine : key=fettuccine
fettuccine pasta : key=fettuccine
fregola = fregula
fresh egg pasta : key=fresh-pasta
fresh gnocchi : key=gnocchi
fresh lasagna sheets : key=lasagne
fresh lasagne : key=lasagne
fresh lasagne sheets : key=lasagne
fresh pasta : key=fresh-pasta
fresh pasta dough : key=pasta-dough
fresh pasta sheets : key=pasta-sheets
fresh tortellini : key=tortellini
frozen pierogi : group=prepared key=pierogi
frozen ravioli : key=ravioli
frozen tortellini : key=tortellini
fusilli : key=fusilli
fusilli bucati : key=fusilli-lunghi
fusilli lunghi : key=fusilli-lunghi
fusilli pasta : key=fusilli
garganelli
gemelli
gluten-free pasta : key=gluten-free-pasta
gnocchetti sardi : key=malloreddus
gnocchi : key=gnocchi
jumbo pasta shell : key=jumbo-shells
jumbo pasta shells : key=jumbo-shells
jumbo shells = jumbo shell : key=jumbo-shells
lasagna : key=lasagne dish
lasagna noodle : key=lasagne
lasagna noodles : key=lasagne
lasagna sheet : key=lasagne
lasagna sheets : key=lasagne
lasagne : key=lasagne dish
lasagne sheet : key=lasagne
lasagne sheets : key=lasagne
leftover pasta : key=cooked-pasta
lentil pasta : key=gluten-free-pasta
linguine = linguini
lumache : key=lumache
lumaconi : key=lumache
mac 'n' cheese : group=prepared
mac and cheese : group=prepared
mac and cheese mix : group=prepared key=macaroni-and-cheese-mix
mac n cheese : group=prepared ambiguous
macaroni = macaronis : key=macaroni
macaroni and cheese mix : group=prepared key=macaroni-and-cheese-mix
macaroni cheese : group=prepared ambiguous
macaroni pasta : key=macaroni
maccheroni : key=macaroni
mafalda : key=mafaldine
mafaldine : key=mafaldine
malloreddus : key=malloreddus
manicotti : key=manicotti
manicotti shell : key=manicotti
manicotti shells : key=manicotti
medium pasta shells : key=shell-pasta
medium shells : key=shell-pasta
mezze rigatoni : key=rigatoni
mostaccioli
no-boil lasagna noodles : key=lasagne
orecchiette
orzo : key=orzo
orzo pasta : key=orzo
oven-ready lasagna : key=lasagne
oven-ready lasagna noodles : key=lasagne
paccheri
pappardelle
pasta = pastas
pasta dough : key=pasta-dough
pasta shapes = pasta shape : key=pasta-shapes
pasta sheets = pasta sheet : key=pasta-sheets
pasta shells : key=shell-pasta
pasta wheels : key=rotelle
pastina : key=stelline
penne : key=penne
penne pasta : key=penne
penne rigate : key=penne
perciatelle : key=bucatini
pici
pierogi = pierogies : group=prepared key=pierogi
potato gnocchi : key=gnocchi
potato pierogi : group=prepared key=pierogi
radiatori = radiatore
ravioli : key=ravioli
ravioli pasta : key=ravioli
ready-made gnocchi : key=gnocchi
red lentil pasta : key=gluten-free-pasta
refrigerated cheese tortellini : key=tortellini
refrigerated ravioli : key=ravioli
reginette : key=mafaldine
rice pasta : key=gluten-free-pasta
rigatoni : key=rigatoni
rigatoni pasta : key=rigatoni
risoni : key=orzo
rotelle : key=rotelle
rotini : key=rotini
rotini pasta : key=rotini
salad macaroni : key=ditalini
sfoglia
shelf-stable gnocchi : key=gnocchi
shell pasta = pasta shell : key=shell-pasta
short pasta : key=pasta-shapes
small pasta : key=pasta-shapes
small pasta shells : key=shell-pasta
small shells : key=shell-pasta
small soup pasta : key=soup-pasta
soup pasta : key=soup-pasta
spaghetti = spag, spags
spaghetti alla chitarra : key=chitarra
spaghetti in tomato sauce : group=prepared key=canned-spaghetti
spaghettini : kind=spaghetti key=thin-spaghetti
spinach and ricotta ravioli : key=ravioli
spätzle = spaetzle
star pasta : key=stelline
stelline : key=stelline
strozzapreti
tagliarini : key=tagliolini
tagliatelle : key=tagliatelle
tagliatelle pasta : key=tagliatelle
tagliolini : key=tagliolini
tarhana : group=soup
thin spaghetti : kind=spaghetti key=thin-spaghetti
tinned spaghetti : group=prepared key=canned-spaghetti
tiny pasta : key=soup-pasta
tortellini : key=tortellini
tortelloni : key=tortellini
tortiglioni
trahana : group=pasta
tri-color rotini : key=rotini
tricolour rotini : key=rotini
trofie : key=trofie
trofie pasta : key=trofie
tubetti : key=ditalini
vermicelli
wagon wheel pasta : key=rotelle
wagon wheels : key=rotelle
whole-grain pasta : key=wholewheat-pasta
wholemeal pasta : key=wholewheat-pasta
wholewheat pasta = whole wheat pasta : key=wholewheat-pasta
wholewheat spaghetti = whole wheat spaghetti : kind=spaghetti
ziti : key=ziti
ziti pasta : key=ziti

# Noodles and wrappers
@ FOOD noun group=noodle kind=noodle
asian noodle : key=chinese-noodle proper=1
banh pho : key=rice-noodle
bean thread : key=glass-noodle
bean thread noodle : key=glass-noodle
bee hoon : mass key=rice-vermicelli
biang biang noodle : key=wheat-noodle
broad egg noodle : key=egg-noodle
buckwheat noodle : key=soba-noodle
bun noodle : mass key=rice-vermicelli
cellophane noodle : key=glass-noodle
chinese egg noodle : key=egg-noodle proper=1
chinese noodle : proper=1 key=chinese-noodle
chinese pancake : group=bread kind=pancake key=mandarin-pancake proper=1
chinese wheat noodle : key=wheat-noodle proper=1
chow mein noodle : key=lo-mein-noodle
cold noodle : key=cold-noodle
crispy chow mein noodle : key=lo-mein-noodle
crispy noodle : key=lo-mein-noodle
crystal noodle : key=glass-noodle
dangmyeon : key=sweet-potato-noodle
dried rice noodle : key=rice-noodle
dumpling skin : kind=wrapper key=gyoza-wrapper
dumpling wrapper : kind=wrapper key=gyoza-wrapper
egg noodle : key=egg-noodle
egg noodle nest : key=vermicelli-nest
egg roll skin : kind=wrapper key=egg-roll-wrapper
egg roll wrapper : kind=wrapper key=egg-roll-wrapper
extra-wide egg noodle : key=egg-noodle
falooda sev : mass
fine egg noodle : key=egg-noodle
flat rice noodle : key=rice-noodle
fresh egg noodle : key=egg-noodle
fresh noodle : key=wheat-noodle
fresh ramen noodle : key=ramen-noodle
fresh rice noodle : key=fresh-rice-noodle
fresh udon noodle : key=udon-noodle
fried noodle : key=lo-mein-noodle
frozen udon noodle : key=udon-noodle
glass noodle : key=glass-noodle
green tea soba noodle : key=soba-noodle
gyoza skin : kind=wrapper key=gyoza-wrapper
gyoza wrapper : kind=wrapper key=gyoza-wrapper
hand-pulled noodle : key=wheat-noodle
ho fun noodle : key=fresh-rice-noodle
hokkien : key=hokkien-noodle
hokkien noodle : key=hokkien-noodle
hor fun : key=fresh-rice-noodle
idiyappam : mass key=idiyappam
instant noodle : key=instant-noodle
instant ramen : key=ramen-noodle
instant ramen noodle : key=ramen-noodle
kataifi = kadaif : mass group=pastry key=kataifi
kataifi pastry : mass group=pastry key=kataifi
kelp noodle strip
kishk : mass group=dairy
kluski noodle : key=egg-noodle
knife-cut noodle : key=wheat-noodle
konjac : mass key=konjac
konjac noodle : key=shirataki-noodle
konnyaku : mass key=konjac
korean glass noodle : key=sweet-potato-noodle proper=1
kway teow : key=fresh-rice-noodle
lo mein : key=lo-mein-noodle
lo mein noodle : key=lo-mein-noodle
lumpia wrapper : kind=wrapper key=spring-roll-wrapper
mandarin pancake : group=bread kind=pancake proper=1 key=mandarin-pancake
mandu wrapper : kind=wrapper key=gyoza-wrapper
medium egg noodle : key=egg-noodle
medium noodle : key=chinese-noodle
mei fun : mass key=rice-vermicelli
moo shu pancake : group=bread kind=pancake key=mandarin-pancake
mung bean noodle : key=glass-noodle
mung bean vermicelli : key=glass-noodle
naengmyeon : key=cold-noodle
noodle
noodle nest : key=vermicelli-nest
packet noodle : key=instant-noodle
pad thai noodle : key=rice-noodle
peking duck pancake : group=bread kind=pancake key=mandarin-pancake proper=1
pho noodle : key=rice-noodle
potsticker wrapper : kind=wrapper key=gyoza-wrapper
ramen : key=ramen-noodle
ramen noodle : key=ramen-noodle
ramen packet : key=instant-noodle
ramens : key=ramen-noodle
ready-cooked noodle : key=chinese-noodle
rice noodle : key=rice-noodle
rice paper : kind=wrapper key=rice-paper-wrapper
rice paper round : kind=wrapper key=rice-paper-wrapper
rice paper sheet : kind=wrapper key=rice-paper-wrapper
rice paper wrapper : kind=wrapper key=rice-paper-wrapper
rice stick : key=rice-noodle
rice stick noodle : key=rice-noodle
rice vermicelli : mass key=rice-vermicelli
rice vermicelli cake
rice vermicelli noodle : mass key=rice-vermicelli
roasted vermicelli : mass key=semiya
round dumpling wrapper : kind=wrapper key=gyoza-wrapper
saifun : key=glass-noodle
samosa pastry = samoosa pastry : kind=wrapper key=samosa-pastry
samosa patti : kind=wrapper key=samosa-pastry
samosa sheet : kind=wrapper key=samosa-pastry
samosa wrapper : kind=wrapper key=samosa-pastry
semiya = seviyan, semiyan : mass key=semiya
shanghai noodle : key=wheat-noodle
shirataki : key=shirataki-noodle
shirataki noodle : key=shirataki-noodle
shredded filo : mass group=pastry key=kataifi
singapore noodle : proper=1
soba : key=soba-noodle
soba noodle : key=soba-noodle
somen : key=somen-noodle
somen noodle : key=somen-noodle
spring roll pastry : kind=wrapper key=spring-roll-wrapper
spring roll sheet : kind=wrapper key=spring-roll-wrapper
spring roll skin : kind=wrapper key=spring-roll-wrapper
spring roll wrapper : kind=wrapper key=spring-roll-wrapper
square wonton wrapper : kind=wrapper key=wonton-wrapper
stir-fry noodle : key=chinese-noodle
straight-to-wok noodle : key=chinese-noodle
string hopper : mass key=idiyappam
summer roll wrapper : kind=wrapper key=rice-paper-wrapper
sweet potato noodle : key=sweet-potato-noodle
sweet potato starch noodle : key=sweet-potato-noodle
thick noodle : key=chinese-noodle
thick rice noodle : key=rice-noodle
thin egg noodle : key=egg-noodle
thin noodle : key=chinese-noodle
thin rice noodle : mass key=rice-vermicelli
tofu noodle
two-minute noodle : key=instant-noodle
udon : key=udon-noodle
udon noodle : key=udon-noodle
udons : key=udon-noodle
vermicelli nest : key=vermicelli-nest
vermicelli noodle : mass key=rice-vermicelli
vermicelli rice noodle : mass key=rice-vermicelli
wheat noodle : key=wheat-noodle
wheat vermicelli : mass key=semiya
wide egg noodle : key=egg-noodle
wide rice noodle : key=rice-noodle
wonton noodle
wonton pastry : kind=wrapper key=wonton-wrapper
wonton sheet : kind=wrapper key=wonton-wrapper
wonton skin : kind=wrapper key=wonton-wrapper
wonton wrapper : kind=wrapper key=wonton-wrapper
yakisoba : key=yakisoba-noodle
yakisoba noodle : key=yakisoba-noodle

# Pulses
@ FOOD noun group=legume kind=bean
15-bean soup mix : key=mixed-bean
adzuki : key=adzuki-bean
adzuki bean = aduki bean, azuki bean : key=adzuki-bean
anasazi bean
baby lima bean : key=lima-bean
baked bean : key=baked-bean
baked beans in tomato sauce : key=baked-bean
bean : kind=bean
bean mix : key=mixed-bean
bean salad mix : key=mixed-bean
beans in chili sauce : key=chili-bean
beans in chilli sauce : key=chili-bean
beluga lentil : kind=lentil key=black-lentil
bhuna chana : key=roasted-chickpea
black bean : key=black-bean
black chickpea : kind=chickpea key=black-chickpea
black lentil : kind=lentil key=black-lentil
black soybean
black turtle bean : key=black-bean
black-eyed bean = black eye bean : key=black-eyed-pea
black-eyed pea : key=black-eyed-pea
blackeye pea : key=black-eyed-pea
borlotti : key=borlotti-bean
borlotti bean : key=borlotti-bean
boston baked beans : key=baked-bean
brown lentil : kind=lentil
butter bean : key=lima-bean
canary bean : key=peruano-bean
canned bean : kind=bean key=tinned-bean
canned chickpea : key=chickpea kind=chickpea
canned lentil : kind=lentil key=tinned-lentil
cannellini : key=cannellini-bean
cannellini bean : key=cannellini-bean
carioca bean : key=pinto-bean
ceci bean : key=chickpea kind=chickpea
central american red bean : key=red-bean
chickpea = chick pea : key=chickpea kind=chickpea
chili bean = chilli bean : key=chili-bean
chole : mass kind=chickpea key=kabuli-chana
congo pea : kind=pea key=pigeon-pea
cooked lentil : kind=lentil key=tinned-lentil
corona bean
cowpea : key=black-eyed-pea
cranberry bean : key=cranberry-bean
cream pea : kind=pea key=field-pea
crowder pea : kind=pea key=field-pea
dark red kidney bean : key=kidney-bean
desi chickpea : kind=chickpea key=black-chickpea
douchi : group=condiment key=fermented-black-bean
dried bean : kind=bean
dried broad bean : key=dried-broad-bean
dried chickpea : kind=chickpea
dried fava bean : key=dried-broad-bean
dried green pea : kind=pea key=dried-green-pea
dried green split pea : kind=pea key=green-split-pea
dried pea : kind=pea key=dried-pea
dried soybean : key=soybean
dried yellow split pea : kind=pea key=yellow-split-pea
edamame in pod = edamame in the pod
fermented black bean : group=condiment key=fermented-black-bean
field pea : kind=pea key=field-pea
flageolet : key=flageolet-bean
flageolet bean : key=flageolet-bean
four-bean mix : key=mixed-bean
french green lentil : kind=lentil key=puy-lentil proper=1
french lentil : kind=lentil key=puy-lentil proper=1
frijol negro : key=black-bean
frozen lima bean : key=lima-bean
ful : key=dried-broad-bean ambiguous
ful medames : key=dried-broad-bean
gandule : kind=pea key=pigeon-pea
gandules : kind=pea key=pigeon-pea
garbanzo : key=chickpea kind=chickpea
garbanzo bean : key=chickpea kind=chickpea
giant white bean : key=gigante-bean
gigante bean : key=gigante-bean
gigantes : key=gigante-bean
great northern bean
green gram : key=mung-bean
green lentil : kind=lentil
green pigeon pea : kind=pea key=pigeon-pea
green split pea : kind=pea key=green-split-pea
gungo pea : kind=pea key=pigeon-pea
haricot bean : key=navy-bean
horse gram : mass key=horse-gram
jarred chickpea : key=chickpea kind=chickpea
judión bean : key=gigante-bean
kabuli chana : mass kind=chickpea key=kabuli-chana
kala chana : kind=chickpea key=black-chickpea
kidney bean : key=kidney-bean
kulthi : mass key=horse-gram
lady pea : kind=pea key=field-pea
lentil : kind=lentil
lentils du puy : kind=lentil key=puy-lentil
light red kidney bean : key=kidney-bean
lima bean : key=lima-bean
lobia : key=black-eyed-pea
lupin bean = lupini bean : key=lupin-bean
lupini : key=lupin-bean
marrow bean
matki : key=moth-bean
mayocoba bean : key=peruano-bean
mixed bean : key=mixed-bean
moong bean : key=mung-bean
moth bean : key=moth-bean
mung bean : key=mung-bean
navy bean : key=navy-bean
pea bean : key=navy-bean
peruano bean : key=peruano-bean
pigeon pea : kind=pea key=pigeon-pea
pinto bean : key=pinto-bean
pintos : key=pinto-bean
pork and beans : key=baked-bean
pottukadalai : key=roasted-chickpea
pre-cooked lentil : kind=lentil key=tinned-lentil
purple hull pea : kind=pea key=field-pea
puy lentil : kind=lentil proper=1 key=puy-lentil
rajma : key=kidney-bean
ranch-style bean : key=chili-bean
rattlesnake bean
ready-cooked lentil : kind=lentil key=tinned-lentil
red bean : key=red-bean
red kidney bean : key=kidney-bean
red lentil : kind=lentil key=red-lentil
refried bean : key=refried-bean
roasted chana dal : key=roasted-chickpea
roasted chickpea : key=roasted-chickpea
roasted chickpea snack : group=prepared
roasted gram : key=roasted-chickpea
roman bean : key=cranberry-bean
sabut moong : key=mung-bean
safed vatana : kind=pea key=dried-green-pea
salted black bean : group=condiment key=fermented-black-bean
small red bean : key=red-bean
small white bean : key=white-bean
soup mix beans : key=mixed-bean
soup pea : kind=pea key=dried-pea
soya bean : key=soybean
soybean : key=soybean
split fava bean : key=dried-broad-bean
split pea : kind=pea
split red lentil : kind=lentil key=red-lentil
tepary bean
three-bean mix : key=mixed-bean
tinned bean : kind=bean key=tinned-bean
tinned black bean : key=black-bean
tinned cannellini bean : key=cannellini-bean
tinned chickpea : key=chickpea kind=chickpea
tinned kidney bean : key=kidney-bean
tinned lentil : kind=lentil key=tinned-lentil
tinned mixed bean : key=mixed-bean
turtle bean : key=black-bean
vegetarian refried bean : key=refried-bean
white bean : key=white-bean
white kidney bean : key=cannellini-bean
white pea : kind=pea key=dried-green-pea
whole dried pea : kind=pea key=dried-pea
whole moong : key=mung-bean
yellow lentil : kind=lentil
yellow soybean : key=soybean
yellow split pea : kind=pea key=yellow-split-pea
zipper pea : kind=pea key=field-pea
@ FOOD noun mass group=legume kind=dal
arhar dal : key=toor-dal
bengal gram : key=chana-dal
black gram : key=urad-dal
chana dal = channa dal : key=chana-dal
chilka moong dal : key=chilka-moong-dal
dal = dhal, dahl, daal, dals
dhuli urad : key=urad-dal
green moong dal : key=chilka-moong-dal
masoor dal = red lentil dal, masur dal : key=masoor-dal
mixed dal : key=panchmel-dal
moong dal : key=moong-dal
mung dal : key=moong-dal
panchmel dal : key=panchmel-dal
sabut masoor : key=whole-masoor
sabut urad : key=whole-urad
split bengal gram : key=chana-dal
split black gram : key=urad-dal
split chickpea : key=chana-dal
split green gram : key=moong-dal
split green moong dal : key=chilka-moong-dal
split masoor dal : key=masoor-dal
split moong beans : key=moong-dal
split mung beans : key=moong-dal
split urad dal : key=urad-dal
split yellow moong dal : key=moong-dal
toor dal : key=toor-dal
toovar dal : key=toor-dal
tur dal : key=toor-dal
tuvar dal : key=toor-dal
urad dal : key=urad-dal
white urad dal : key=urad-dal
whole black gram : key=whole-urad
whole masoor : key=whole-masoor
whole urad = urad whole : key=whole-urad
yellow moong dal : key=moong-dal

# Nuts
@ FOOD noun group=nut kind=nut
almond : kind=almond
almond brittle : mass group=confection key=nut-brittle
almond sliver : kind=almond key=slivered-almond
beech nut = beechnut
bitter almond : kind=almond
black walnut : kind=walnut
blanched almond : kind=almond
blanched hazelnut : kind=hazelnut key=hazelnut
boiled peanut : kind=peanut
brazil nut : kind=brazil-nut proper=1
buah keras : key=candlenut
candied chestnut : group=confection key=marron-glacé
candied nut : key=candied-pecan
candied pecan : key=candied-pecan
candied walnut : key=candied-pecan
candlenut : key=candlenut
cashew : kind=cashew key=cashew-nut
cashew nut : kind=cashew key=cashew-nut
cashew piece : kind=cashew key=cashew-nut
cedar nut
charoli : mass key=charoli
chestnut : kind=chestnut key=chestnut
chestnut purée : mass group=paste key=chestnut-purée
chironji : mass key=charoli
chopped almond : kind=almond key=nibbed-almond
chopped hazelnut : kind=hazelnut key=hazelnut
cobnut : kind=hazelnut key=hazelnut
cocktail nut : key=mixed-nut
cocktail peanut : kind=peanut key=roasted-peanut
coconut : kind=coconut
cooked chestnut : kind=chestnut key=chestnut
crème de marrons : mass group=paste key=chestnut-purée
deluxe mixed nut : key=mixed-nut
dry-roasted peanut : kind=peanut key=roasted-peanut
filbert : kind=hazelnut key=hazelnut
flaked almond : kind=almond key=flaked-almond
ginkgo nut = gingko nut
glazed pecan : key=candied-pecan
ground almond : kind=almond key=ground-almonds
groundnut : kind=peanut key=peanut
hazelnut : kind=hazelnut key=hazelnut
hickory nut
honey-roasted peanut : kind=peanut key=roasted-peanut
kaju : kind=cashew key=cashew-nut
kemiri : key=candlenut
kola nut
macadamia : kind=macadamia key=macadamia-nut
macadamia nut : kind=macadamia key=macadamia-nut
marcona almond : kind=almond key=smoked-almond
marron glacé : group=confection key=marron-glacé
mixed nut : key=mixed-nut
monkey nut : kind=peanut key=peanut
nibbed almond : kind=almond key=nibbed-almond
nibbed pistachio : kind=pistachio key=pistachio
nut : ambiguous
nut brittle : mass group=confection key=nut-brittle
peanut : kind=peanut key=peanut
pecan : kind=pecan key=pecan
pecan half : kind=pecan key=pecan plural=halves
pecan nut : kind=pecan key=pecan
pecan piece : kind=pecan key=pecan
peeled chestnut : kind=chestnut key=chestnut
pickled walnut : kind=walnut group=condiment
pignoli : kind=pine-nut key=pine-nut
pignolia : kind=pine-nut key=pine-nut
pili nut
pine kernel : kind=pine-nut key=pine-nut
pine nut = pinenut : kind=pine-nut key=pine-nut
pistachio : kind=pistachio key=pistachio
pistachio kernel : kind=pistachio key=pistachio
pistachio nut : kind=pistachio key=pistachio
pistachios in shell : kind=pistachio key=pistachio
praline : ambiguous mass group=confection dish
praline paste : mass group=confection key=nut-brittle
praline pecan : key=candied-pecan
raw cashew : kind=cashew key=cashew-nut
raw cashew nut : kind=cashew key=cashew-nut
raw peanut : kind=peanut key=roasted-peanut
redskin peanut : kind=peanut key=roasted-peanut
roast chestnut : kind=chestnut key=chestnut
roasted almond : kind=almond key=smoked-almond
roasted cashew : kind=cashew key=cashew-nut
roasted chestnut : kind=chestnut key=chestnut
roasted chopped hazelnut : kind=hazelnut key=hazelnut
roasted peanut : kind=peanut key=roasted-peanut
roasted salted peanut : kind=peanut key=roasted-peanut
salted almond : kind=almond key=smoked-almond
salted peanut : kind=peanut key=roasted-peanut
shelled pistachio : kind=pistachio key=pistachio
skinless peanut : kind=peanut key=roasted-peanut
skinned hazelnut : kind=hazelnut key=hazelnut
sliced almond : kind=almond key=flaked-almond
slivered almond : kind=almond key=slivered-almond
slivered pistachio : kind=pistachio key=pistachio
smoked almond : kind=almond key=smoked-almond
spiced nut : key=candied-pecan
sweetened chestnut purée : mass group=paste key=chestnut-purée
tiger nut = tigernut : group=nut
tinned chestnut : kind=chestnut key=chestnut
toasted chopped hazelnut : kind=hazelnut key=hazelnut
unsalted peanut : kind=peanut key=roasted-peanut
unsalted pistachio : kind=pistachio key=pistachio
unsweetened chestnut purée : mass group=paste key=chestnut-purée
vacuum-packed chestnut : kind=chestnut key=chestnut
walnut : kind=walnut key=walnut
walnut half : kind=walnut key=walnut plural=halves
walnut piece : kind=walnut key=walnut
whole almond : kind=almond key=almond
@ FOOD noun mass group=nut kind=coconut
coconut block : key=creamed-coconut
coconut butter : key=coconut-manna
coconut chips : key=coconut-flakes
coconut flakes = coconut flake : key=coconut-flakes
coconut flesh : key=coconut-meat
coconut manna : key=coconut-manna
coconut meat : key=coconut-meat
coconut shavings : key=coconut-flakes
copra
creamed coconut : key=creamed-coconut
desiccated coconut = dessicated coconut
flaked coconut : key=coconut-flakes
freshly grated coconut : key=grated-coconut
frozen grated coconut : key=grated-coconut
grated coconut : key=grated-coconut
shredded coconut : key=shredded-coconut
sweetened coconut : key=sweetened-coconut
sweetened coconut flakes : key=coconut-flakes
sweetened flaked coconut : key=coconut-flakes
sweetened shredded coconut : key=shredded-coconut
toasted coconut : key=sweetened-coconut
toasted coconut flakes : key=coconut-flakes
unsweetened coconut : key=sweetened-coconut
unsweetened coconut flakes : key=coconut-flakes
unsweetened shredded coconut : key=shredded-coconut

# Nut and seed butters
@ FOOD noun mass group=nut kind=butter
almond butter : key=almond-butter
cashew butter
chunky peanut butter : key=crunchy-peanut-butter
creamy peanut butter : key=smooth-peanut-butter
crunchy almond butter : key=almond-butter
crunchy peanut butter : key=crunchy-peanut-butter
groundnut paste : key=peanut-butter
hazelnut butter
natural peanut butter : key=smooth-peanut-butter
nut butter
peanut butter = pb
peanut butter powder : key=powdered-peanut-butter
peanut flour : key=powdered-peanut-butter
pecan butter : key=walnut-butter
pistachio butter : key=pistachio-butter
pistachio cream : key=pistachio-butter
pistachio paste : key=pistachio-butter
powdered peanut butter : key=powdered-peanut-butter
pumpkin seed butter : group=seed key=sunflower-seed-butter
seed butter : group=seed key=sunflower-seed-butter
smooth almond butter : key=almond-butter
smooth peanut butter : key=smooth-peanut-butter
sunflower butter : group=seed key=sunflower-seed-butter
sunflower seed butter : group=seed key=sunflower-seed-butter
unsweetened peanut butter : key=smooth-peanut-butter
walnut butter : key=walnut-butter

# Seeds
@ FOOD noun group=seed kind=seed
basil seed : key=basil-seed
benne seed : key=sesame-seed
black chia seed : key=chia-seed
black sesame : key=black-sesame-seed
black sesame paste : mass kind=tahini key=black-tahini
black sesame seed : key=black-sesame-seed
black tahini : mass kind=tahini key=black-tahini
charmagaz : key=melon-seed
chia : key=chia-seed
chia egg : key=flax-egg
chia seed : key=chia-seed
chias : key=chia-seed
chinese sesame paste : mass kind=paste key=sesame-paste proper=1
dark tahini : mass kind=tahini key=tahini
egusi : mass key=egusi
egusi seed : mass key=egusi
flax : mass key=ground-flaxseed
flax egg : key=flax-egg
flax meal : mass key=ground-flaxseed
flax seed : key=flaxseed
flaxseed : key=flaxseed
flaxseed meal : mass key=ground-flaxseed
golden linseed : key=flaxseed
gomashio = gomasio : mass key=gomashio
grape seed
green pumpkin seed : key=pumpkin-seed
ground egusi : mass key=egusi
ground flax : mass key=ground-flaxseed
ground flaxseed = ground flax seed : mass key=ground-flaxseed
ground linseed : mass key=ground-flaxseed
halva = halvah, halwa : mass group=confection
hemp heart : key=hemp-seed
hemp seed : key=hemp-seed
hulled hemp seed : key=hemp-seed
hulled sesame seed : key=sesame-seed
hulled sunflower seed : key=sunflower-seed
hulled tahini : mass kind=tahini
light tahini : mass kind=tahini key=tahini
linseed : key=flaxseed
lotus seed
magaz : key=melon-seed
melon seed : key=melon-seed
milled flaxseed : mass key=ground-flaxseed
milled linseed : mass key=ground-flaxseed
mixed seed
pepita : key=pumpkin-seed
perilla seed : key=perilla-seed
perilla seed powder : key=perilla-seed
pumpkin seed : key=pumpkin-seed
pumpkin seed kernel : key=pumpkin-seed
quince seed
roasted sesame seed : key=sesame-seed
runny tahini : mass kind=tahini key=tahini
sabja : key=basil-seed
sabja seed : key=basil-seed
seed : ambiguous
sesame : key=sesame-seed
sesame paste : mass kind=paste key=sesame-paste
sesame salt : mass key=gomashio
sesame seed : key=sesame-seed
shelled hemp seed : key=hemp-seed
subja : key=basil-seed
sunflower kernel : key=sunflower-seed
sunflower seed : key=sunflower-seed
sunflower seed kernel : key=sunflower-seed
tahini = tahina : mass kind=tahini key=tahini
tahini paste : mass kind=tahini key=tahini
toasted sesame seed : key=sesame-seed
tukmaria : key=basil-seed
unhulled sesame seed : key=sesame-seed
untoasted sesame seed : key=sesame-seed
vegan egg : key=flax-egg
watermelon seed : key=melon-seed
white chia seed : key=chia-seed
white sesame seed
wild sesame seed : key=perilla-seed

# Said for short
@ FOOD noun mass group=pasta kind=pasta ambiguous
elbows : key=macaroni ambiguous
shells
