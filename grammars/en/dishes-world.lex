# Names of dishes from many kitchens: heads ("thoran") and phrases that stand
# as one ("toad in the hole"). dishes.lex has the common ones and the words
# that go before them.
#
# DISH      a dish by its name alone
# DISHFOOD  as often a food that is bought, or a plain word
# PARTHEAD  as often a part that goes with a dish
# proper=N  its first N words are written with a capital

# ---- soups ------------------------------------------------------------------
@ DISH noun
acquacotta
albondigas soup
alphabet soup
avgolemono
azifa
brodetto
brown windsor soup : proper=2
caldeirada
chikhirtma
chorba = shorba, çorba, shurba
congee = jook
egg drop soup = egg flower soup
fanesca
garbure
ginataan
goulash soup
harira
hot and sour soup
italian wedding soup : proper=1
jjigae
kakavia
kapusniak
kharcho
krupnik
lohikeitto
manhattan clam chowder : proper=1
matzo ball soup = matzah ball soup
menestra
new england clam chowder : proper=2
okroshka
panada
pepper pot soup
pepperpot
pistou soup
potage
pottage
rassolnik
ribollita
sancocho
she-crab soup
sinigang
solyanka
stracciatella
taco soup
tarator
tinola
tom yum soup
wonton soup
@ DISH noun mass
brodo
budae jjigae
caldo
caldo de pollo
caldo de res
caldo tlalpeño
caldo verde
chupe
cock-a-leekie = cockie leekie
crema de elote
cullen skink : proper=1
ezogelin
fufu and light soup
gulyás
haleem
huku ne dovi
kadyos
mannish water
mercimek
mohinga
mulligatawny
naengmyeon
pappa al pomodoro
pasta e fagioli = pasta fazool
sayur asem
sayur lodeh
shchav
shchi
sopa de ajo
sopa de fideo
sopa de lima
sopa de tortilla
sopa seca
soto
soto ayam
soupe au pistou
sundubu jjigae = soondubu jjigae
tom kha
tom kha gai
tom yum goong
tonjiru
ukha
waterzooi
zuppa
zuppa di pesce
zuppa toscana
żurek
@ DISHFOOD noun ambiguous
callaloo
consommé

# ---- stews, braises, casseroles ---------------------------------------------
@ DISH noun
afritada
albóndigas
asopao
baeckeoffe
beef and ale stew
blanquette
bobotie
bouneschlupp
bredie
brunswick stew : proper=1
bulalo
burgoo
cachupa
caldereta = kaldereta
caponata
carbonnade = carbonade, carbonade flamande, carbonnade flamande
chakalaka
chicken fricot
colombo
daube
estofado
fabada
fasolada
feijoada
flamiche
frogmore stew : proper=1
guisado
hunter's stew
kapama
karelian hotpot : proper=1
karelian stew : proper=1
karnıyarık
kontomire stew
machbous = machboos, kabsa
mechado
mole poblano
mole verde
moqueca
mrouzia
navarin
olla podrida
paprikash = paprikas
peperonata
piperade
puchero
saganaki
spezzatino
stamppot
stifado
swiss steak : proper=1
tas kebab
tocană
white chili
@ DISH noun mass
abgoosht
adovada
alicha
asado
atakilt wat
bacalao a la vizcaína
bacalhau à brás
bamia
bicol express : proper=1
bigos
blanquette de veau
bo kho
bollito misto
bossam
brown stew chicken
brown stew fish
carne guisada
carne mechada
cawl
chakhokhbili
chanakhi
charquicán
chasseur
cheesy potatoes
chicken à la king
chicken and dumplings
chicken marengo
chili colorado = chile colorado
chili verde = chile verde
chilorio
cholent
choucroute garnie
cochinita pibil
cocido
cozido
curry goat
dibi
dinuguan
doro wat = doro wot, doro wett
fahsa
fenkata
fesenjan = fesenjoon
fish and brewis
frijoles charros
frijoles refritos
gaeng som
galbi-jjim = kalbi jjim
gheimeh
ghiveci
ghormeh sabzi
giouvetsi = youvetsi
guiso
gyuvech
hachee
hachis parmentier
hayashi rice
hutspot
jugged hare
kaeng khua
kare-kare
keshi yena
key wat
kleftiko
lapskaus
lecsó
linsen mit spätzle
lobscouse
locro
maafe = mafé, mafe
mapo tofu
matapa
mince and dumplings
mince and tatties
misir wat = misir wot
muamba
mulgikapsad
ndolé
nihari
nikujaga
osso buco = ossobuco
pabellón criollo
pepián
peposo
picadillo
pichelsteiner
pisto
pörkölt
pot-au-feu
potjiekos
pyttipanna = pytt i panna
romazava
ropa vieja
rougail saucisse
salmi
salmis
sauerbraten
seco de cordero
seco de pollo
shakriya
shiro wat
stoemp
stoofvlees
stovies
tafelspitz
tharida
tibs
trippa alla romana
tsebhi
tzimmes
yahni
yassa
zharkoe
zürcher geschnetzeltes : proper=1
@ DISHFOOD noun mass ambiguous
molokhia = mulukhiyah, molokhiya

# ---- curries and dishes of south asia ---------------------------------------
@ DISH noun
achaar = achar
adai
akki roti
aloo chaat
aloo chop
amritsari kulcha : proper=1
appam
ari pathiri
baida roti
balti
batata vada
bebinca
bhajiya
bharwan karela
bhature = bhatura, bhatoora
bonda
chana chaat
chapli kebab
cheera thoran
chilla = cheela
chingri malai curry
coorgi pandi curry : proper=1
dabeli
dahi bhalla
dal baati
dal bafla
dhokla
dhuska
dum biryani
egg hopper
falooda
galouti kebab
gol gappa = golgappa
gujiya
gunpowder idli
handvo
hara bhara kebab
inji curry
kachori
kadala curry
kakori kebab
karanji
kathi roll
keema naan
kerala fish curry : proper=1
kerala parotta : proper=1
kesar pista kulfi
koki
kothu roti = kottu roti, kottu
kozhukattai
kulcha
kuttu puri
lachha paratha
luchi
lucknowi biryani : proper=1
makki roti = makki ki roti
malabar fish curry : proper=1
malabar parotta : proper=1
malpua
matar kachori
medu vada
meen curry
mirchi bajji
missi roti
modak
momo
moru curry
mughlai paratha : proper=1
nankhatai
nariyal barfi
neer dosa
nei appam
obbattu
pakoda
palappam
pandi curry
paneer tikka
pani puri = paani puri
papdi chaat
papri chaat
parotta = porotta, barotta
patishapta
peda
pesarattu
phuchka
pinni
pitha
pol roti
poriyal
puran poli
pyaaz kachori
qorma
ragi mudde
railway mutton curry
rasgulla = rosogolla
rasmalai = ras malai
reshmi kebab
rogni naan
rumali roti
sambar vada
seekh kebab
shahi tukda = shahi tukra
shami kebab
tandoori roti
tawa pulao
thalipeeth
thoran
tikki
unniyappam
upma pesarattu
vada pav = vadapav
@ DISH noun mass
aam panna
achari chicken
achari paneer
adraki gosht
akoori = akuri
aloo baingan
aloo bhindi
aloo dum = dum aloo
aloo matar = aloo mutter
aloo methi
aloo palak
aloo posto
alur dom
amti
avial = aviyal
badam milk
baghara baingan
balushahi
basundi
bhapa ilish
bharta
bharwa baingan
bharwa bhindi
bhindi fry
bhindi masala
bhuna gosht
bhurji
biryani rice
bisi bele bath = bisi bele bhath
chaach
chaas
chettinad chicken : proper=1
chholar dal
chicken 65
chicken changezi
chicken chettinad
chicken handi
chicken karahi
chicken lababdar
chicken manchurian
chilli chicken
chilli paneer
chokha
cholar dal
dal bhat
dal dhokli
dal fry
dalcha
dalma
dhansak
do pyaza
egg masala
erissery
farsan
fish molee = meen moilee
gajar halwa = gajar ka halwa
gajar matar
gatte ki sabzi
ghevar
ghugni
gobi manchurian
gobi matar
gojju
gushtaba
hariyali chicken
idiyappam
imarti
jeera aloo
jeera rice
jhal muri
kada prasad
kadai chicken
kadai paneer
kadhi = kadi
kadhi pakora
kaju katli
kalakand
kanda poha
kande pohe
karahi gosht
karela fry
keema matar
kesari
kesari bath
khaman
khandvi
khatta meetha
khichra
kiri bath
kolhapuri chicken : proper=1
kootu
kosambari = kosumbari
kosha mangsho
kurma
kuzhambu
lemon rice
litti chokha
maach bhaja
maacher jhol = machher jhol
makhani
malai tikka
meen kuzhambu
methi chicken
methi malai paneer
methi matar malai
milagu rasam
mirchi ka salan
misal
misal pav
mishti doi
mor kuzhambu
murgh makhani
murgh musallam
mysore pak : proper=1
nalli nihari
namkeen
navratan korma
olan
pachadi
palya
panchmel dal
paneer butter masala
panjiri
paruppu
paruppu usili
patra
patrani machhi
paya
payasam
phirni = firni
pongal
prawn balchão
pulihora
puliogare
pulissery
puliyodarai
rabri = rabdi
ragda pattice
rajma chawal
rajma masala
rista
sadya
sai bhaji
sambar rice
sandesh
sarson ka saag
seviyan
shahi paneer
shankarpali
sheer khurma
sheera
shorshe ilish
shukto
sindhi kadhi : proper=1
sol kadhi
solkadhi
sorpotel
sukha bhaji
sukka
sundal
tamarind rice
tandoori chicken
tawa fish
tehri
telebhaja
thakkali sadam
thandai
thayir sadam
thukpa
tindora fry
tomato rice
uggani
undhiyu
upperi
usal
vaingan bharta
vangi bath
vatha kuzhambu
veg makhanwala
ven pongal
zarda
zunka bhakar
@ DISH PARTHEAD noun
sambol
@ DISH PARTHEAD noun mass
pol sambol

# ---- south-east and east asia -----------------------------------------------
@ DISH noun
bakwan
banh mi
bibingka
black pepper crab
bulgogi bowl
burmese tea leaf salad : proper=1
chili crab = chilli crab
crab rangoon
crystal dumpling
curry puff
dango
embutido
ensaymada
gulai
katsu curry
katsu sando
leche flan
lemper
lion's head meatball
lumpia
maki roll
mandu
martabak = murtabak
massaman curry = massaman
mille crêpe cake
mochi
mooncake = moon cake
onsen egg
panang curry = panang
pineapple bun
pork and chive dumpling
pork bun
red bean bun
rice paper roll
sesame ball
snow skin mooncake
soufflé pancake
sushi bake
tamago sando
tea egg
tea leaf egg
tiger salad
tofu scramble
torta
torta ahogada
torta cubana
turon
@ DISH noun mass
adobong manok
agedashi tofu
ang ku kueh
arroz caldo = arroscaldo
asam laksa
asam pedas
ayam bakar
ayam betutu
ayam goreng
ayam penyet
ayam percik
bak kut teh
bakkwa
bakmi
bakso
balado
bang bang chicken
banh bao
banh beo
banh chung
banh cuon
banh xeo
bao zi = baozi
bebek goreng
beef and broccoli
beef chow fun
bibim guksu
bicho-bicho
biko
bistek
black bean noodles
black pepper beef
bo luc lac
bo ssam
bobo chacha = bubur cha cha
bubble tea
bubur ayam
buchimgae
buko pandan
bun bo hue
bun cha
bun rieu
ca kho to
canh chua
cao lau
cendol
cha gio
cha siu bao = char siu bao
champorado
chap chye
char kway teow
chashu = chasiu
chawanmushi
cheong fun
chicharon bulaklak
chicken inasal
chinese spare ribs : proper=1
chirashi = chirashizushi
chop suey
claypot rice
com tam
crispy chilli beef
crispy pata
crossing-the-bridge noodles
cua rang me
curry laksa
curry udon
dak galbi = dakgalbi
dakdoritang
dan bing
dan dan noodles = dandan noodles
dashimaki tamago
dim sum
dorayaki
drunken chicken
drunken noodles
drunken prawns
dry-fried green beans
dubu jorim
ebi fry
egg foo young = egg foo yung, egg fu yung
es campur
fish amok
fish-fragrant aubergine
gado-gado
gaeng daeng
gaeng keow wan
gai yang
galbi = kalbi
galbitang
gamja jorim
gamjatang
general tso's chicken : proper=2
gilgeori toast
gimbap = kimbap
ginger beef
ginisang gulay
ginisang munggo
goi cuon
gomaae = goma-ae
gong bao chicken
gulai ayam
gyu don
gyudon
haemul pajeon
hainanese chicken rice : proper=1
halo-halo
hambagu
har gow = har gau
hiyashi chuka
ho fun
hokkien mee : proper=1
hong shao rou
hoppang
hotteok
iced milk tea
ichiban dashi
ikan bakar
inari sushi = inarizushi
inihaw na liempo
jajangmyeon = jjajangmyeon
jangjorim
jeon
jeyuk bokkeum
jian bing = jianbing
jiaozi
jjampong = jjamppong
jjimdak
kaeng phet
kaiseki
kakiage
kakuni
kanom krok
kao soi = khao soi
karaage
kare ayam
katsudon
kaya toast
ketoprak
khao man gai
khao mok
khao niao
khao pad
kinilaw
kinpira
kinpira gobo
klepon
kolak
kongguksu
korokke
kua kling
kueh
kuih
kuku paka
kung pao chicken
kung pao prawns
kutsinta
laap
lahpet
lap mei fan
larb = laab
larb gai
lawar
lechon
lechon kawali
lo bak go
lo han jai
lo mai gai
lok lak
longsilog
lontong
lontong sayur
lu rou fan
lugaw
ma po tofu
malatang
mandu-guk
mango sticky rice
mazesoba
mee goreng = mie goreng, mi goreng
mee rebus
mee siam
mee soto
mi quang
miso aubergine
miso cod
misua
miyeokguk = miyeok guk
mongolian beef : proper=1
moo goo gai pan
moo ping
moo shu pork = mu shu pork
mul naengmyeon
nabe = nabemono
nam prik ong
nam tok
namul
nanban chicken
nasi campur
nasi goreng
nasi kuning
nasi lemak
nasi padang
nasi uduk
negimaki
nem nuong
ngoh hiang
nikuman
nimono
nuta
ochazuke
oden
ohn no khao swe
oi muchim
okonomiyaki
okoy
omurice = omuraisu
onde onde = ondeh ondeh
opor ayam
orange chicken
otak-otak
oyakodon
pad kra pao = pad krapow, pad kaprao
pad prik king
pad see ew
pad woon sen
pajeon
paksiw
palabok = pancit palabok
pan mee
pancit
pancit bihon
pancit canton
pandesal = pan de sal
peking duck : proper=1
pempek
pepes ikan
phanaeng
pho bo
pho ga
pinakbet = pakbet
pisang goreng
prawn toast
puto
puto bumbong
rad na = lad na
rawon
red-cooked pork
rempeyek
roti canai
roti jala
roti john
roti prata
rou jia mo
rujak = rojak
salt and pepper squid
salt-baked chicken
samgyeopsal
samgyetang
sanbeiji
sang choi bao = san choy bow, san choy bau
sarsiado
satay beef
satay chicken
sate ayam
sate lilit
sesame chicken
sesame noodles
shabu-shabu
sheng jian bao
shio ramen
shiu mai = siu mai, shumai, shaomai
shui jiao
silog
singapore noodles : proper=1
sisig
siu yuk
som tam = som tum
soondae
sop buntut
soy sauce chicken
soy sauce eggs
soya sauce chicken
sukiyaki
sunomono
sweet and sour chicken
sweet and sour pork
sweet and sour prawns
szechuan beef = sichuan beef : proper=1
szechuan chicken = sichuan chicken : proper=1
taho
takikomi gohan
takoyaki
tamagoyaki = tamago yaki
tan tan ramen = tantanmen
tang yuan = tangyuan
tapsilog
tataki
tempeh orek
tempura udon
teppanyaki
thai basil chicken : proper=1
thit kho
three cup chicken
tokwa't baboy
tom saap
tonkatsu
tonkotsu ramen
tori no karaage
tsukemen
tsukune
tteokbokki = topokki, dukbokki
tteokguk
twice-cooked pork
ulam
unadon
urap
xiao long bao = xiaolongbao
yaki onigiri
yaki udon
yakiniku
yakitori
yam naem
yam woon sen
yangnyeom chicken
yangzhou fried rice = yeung chow fried rice : proper=1
yong tau foo
you tiao = youtiao
yubu chobap
yudofu
yuk gae jang = yukgaejang
zha jiang mian = zhajiangmian
zongzi
zosui
@ DISH PARTHEAD noun mass
nam prik
@ DISHFOOD noun ambiguous
mantou
steamed bun
@ DISHFOOD noun mass ambiguous
char siu = cha siu
chicken rice
coconut rice
kway teow
nian gao
sticky rice
tteok
wonton noodles
@ DISHFOOD PARTHEAD noun mass ambiguous
nuoc cham

# ---- middle east, north africa, caucasus, central asia ----------------------
@ DISH noun
adana kebab : proper=1
adjaruli khachapuri
bazlama
bourek = börek, burek, borek
briouat
chelo kabab
dolma
dolmeh
döner = doner kebab
gozleme
iskender kebab
joojeh kabob = joojeh kebab
kefta tagine
khachapuri
khoresh = khoresht
kibbeh = kibbe, kubba
köfte
kubbeh soup
kumpir
lahmacun = lahmajoun
mezze = meze
mrouzia tagine
pastilla = bastilla, b'stilla
samboosa = sambousek, sambusa, sambusak
shashlik
shepherd salad
shirazi salad : proper=1
shish kebab
simit
za'atar bread = zaatar bread
@ DISH noun mass
aish baladi
arayes
ash reshteh
ashure
balık ekmek
basbousa
batata harra
beyran
bissara
bukhari rice
burghul bi banadoura
chakchouka
chebakia
chicken msakhan = musakhan
couscous royale
çılbır = cilbir
dafina
dawood basha
eech
fasulye
fatayer
fatta = fatteh
feteer = fiteer
ful medames = foul medames, ful mudammas, ful
güveç
hamin
hamsi pilavı
harees
haydari
hindbeh
hünkar beğendi
imam bayildi = imam bayıldı
islim kebabı
jachnun
jallab
jeweled rice = jewelled rice
kabak tatlısı
kashk-e bademjan = kashke bademjan
kefta
khinkali
kisir = kısır
knafeh = kunafa, kanafeh, künefe
koobideh
koshari = kushari, koshary
kousa mahshi
kubaneh
kuku sabzi
kuru fasulye
kuzu tandır
lablabi
labneh balls
lahoh
lobio
loubia
loukoumades
lubia polo
luqaimat
ma'amoul = maamoul
maftoul
mahalabia = muhallebi, mahalabiya, malabi
makdous
makroud
malawach
man'oushe = manakish, manakeesh, manaeesh, man'ousheh
mansaf
maqluba = maqlooba, makloubeh
mast-o-khiar
mechoui
mejaddara = mujaddara, mudardara, mujadara
menemen
mirza ghasemi
msemen
mtabbal = moutabal
mücver
muhammara
namoura
persian rice : proper=1
pide
pilav
piyaz
pkhali
plov
qabuli pulao
qatayef
qidra
rfissa
sabich
sabzi polo
sahlab
salona
saltah
samak harra
satsivi
sayadieh
seffa
sellou
sfeeha = sfiha
sfenj
shish barak
shish taouk = shish tawook
sholeh zard
su böreği
sütlaç
tahchin = tah chin
tahdig
taktouka
tamiya = ta'amiya
tantuni
tepsi
umm ali = om ali
warak enab
yaprak sarma
zaalouk
zereshk polo
@ DISH PARTHEAD noun mass
zhoug
@ DISHFOOD noun mass ambiguous
kadaif = kataifi, kadayıf
khobz
turkish delight : proper=1

# ---- africa -----------------------------------------------------------------
@ DISH noun
acarajé
afang soup
akara = akra, accra
ambasha
braaibroodjie
bunny chow
cape malay curry : proper=2
dholl puri
hertzoggie
injera
koeksister
malva pudding
melktert
palava sauce
puff-puff
sosatie
vetkoek
@ DISH noun mass
abacha
alloco
amala
asida
banku
chikanda
chin chin
denningvleis
eba
edikang ikong
efo riro
ewa agoyin = ewa aganyin
fattah
fir-fir = fit-fit
frejon
fufu
fumbwa
gari foto
genfo
githeri
gomen
gomen wat
hausa koko
imfino
irio
isombe
jollof
kedjenou
kelewele
kenkey
kisra
kitcha
kitfo
koki beans
kondowole
koose
kuli-kuli
liboké
luwombo
mahamri
maharagwe
mandazi
mealie bread
mielie bread
mieliepap
moin moin = moi moi
mosbolletjies
mukimo
mursik
nkatenkwan
nshima = nsima
nyama choma
nyembwe
ogi
omo tuo
pap en vleis
peri-peri chicken = piri piri chicken, piri-piri chicken
pilau ya kuku
pounded yam
sadza
samp and beans
seswaa
shiro
shuwa
skilpadjies
suqaar
suya
thieboudienne = ceebu jen
tuo zaafi
ugali
ukodo
ukwaju
vitumbua
waakye
wali wa nazi
zigni
@ DISHFOOD noun mass ambiguous
attiéké
biltong
chermoula
matoke = matooke
shito

# ---- caribbean --------------------------------------------------------------
@ DISH noun
accra fritter
alcapurria
bacalaíto
bara
bokit
bulla cake
coconut bake
coconut turnover
conkie
currants roll
curry crab and dumpling
ducana
duckunoo
gizzada
grater cake
guava duff
jamaican patty : proper=1
mofongo
pastele = pasteles
pastelón
patacon
pelau
pine tart
rum ball
sada roti
saheena
salara
sea moss drink
spice bun
sweet potato pone
tostone
yaniqueque
@ DISH noun mass
ackee and saltfish
arroz con gandules
arroz con leche
arroz con pollo
bake and saltfish
buljol
choka
coconut drops
colombo de poulet
congri
cook-up rice
cou-cou = coo-coo
cowfoot and beans
curry chicken
diri djon djon
diri kole
dukunu
escovitch fish = escoveitch fish
fried plantain = fried plantains
fungee
fungi and fish
geera pork
goat water
jerk chicken
jerk pork
jug-jug
mango chow
mangú
mauby
mojo pork
moros y cristianos
peanut punch
pernil
phulourie = pholourie
rice and gungo peas
rum punch
shark and bake
sorrel drink
soup joumou
tembleque
titiwi accra
@ DISHFOOD noun ambiguous
johnny cake = johnnycake, journey cake
@ DISHFOOD noun mass ambiguous
flying fish
pikliz
stew peas

# ---- latin america ----------------------------------------------------------
@ DISH noun
alfajor : plural=alfajores
anticucho
baked alaska : proper=2
baleada
bandeja paisa
beijinho
bolinho
brigadeiro
buñuelo
burrito bowl
cachapa
cachito
carimañola
cazuela
cemita
chalupa
chile relleno = chiles rellenos, chili relleno
chimichanga
chipa
chivito
choripán
concha
coxinha
croqueta
empadão
empanada gallega
flan
flauta
fugazzeta
gordita
hallaca
hojaldra
hojarasca
humita
jericalla
kibe
llapingacho
mangonada
marquesote
medialuna
milanesa
milcao
mole amarillo
mole negro
nacatamal : plural=nacatamales
paleta
pambazo
pamonha
panucho
pepito
polvorón : plural=polvorones
provoleta
pudim
puffy taco
queijadinha
quesabirria
quindim
rocoto relleno
salbute
salpicão
salteña
sopaipilla = sopapilla
sope
tamal
tequeño
tiradito
tlacoyo
tlayuda
torta de milanesa
tres leches cake
yaroa
@ DISH noun mass
aguachile
aguadito
ají de gallina
ajiaco
aporreado
arepa con queso
arroz a la mexicana
arroz chaufa
arroz con mariscos
arroz rojo
arroz tapado
arroz verde
asado de boda
asado negro
atol = atole
bolinho de bacalhau
bolo de rolo
brazo de reina
calabacitas
caldillo de congrio
caldo de camarón
caldo de siete mares
camarones a la diabla
camarones al mojo de ajo
canjica
capirotada
carapulcra
carne a la tampiqueña
carne con chile
carne en su jugo
causa
champurrado
chile en nogada = chiles en nogada
chiles toreados
chocotorta
chorrillana
chupe de camarones
crema volteada
curanto
curau
discada
elotes
encebollado
enchiladas suizas
enchiladas verdes
enfrijoladas
enmoladas
ensalada rusa
entomatadas
escabeche
escabeche de verduras
escondidinho
esquites = esquite
farofa
feijão
feijão tropeiro
frijoles de olla
frijoles negros
fritada
gallo pinto
guatita
hervido
horchata
hornado
huevos a la mexicana
huevos con chorizo
huevos divorciados
leche de tigre
lechona
locro de papa
lomo saltado
machaca
machaca con huevo
mandioca frita
matambre
mazamorra
mazamorra morada
mexican rice : proper=1
migas
milanesa a la napolitana
molletes
mondongo
morisqueta
ocopa
olla de carne
pabellón
pachamanca
paçoca
pan con tomate
pan de bono = pandebono
pan de elote
pan de jamón
pan de muerto
pan dulce
pão de mel
pão de queijo
papa a la huancaína = papas a la huancaína
papa rellena = papas rellenas
parrillada
pastel azteca
pastel de choclo
pastel de nata = pastéis de nata, pasteis de nata
pastel de papa
pebre
pescado a la veracruzana
pescado zarandeado
picarones
pipián
plátanos fritos
plátanos maduros = maduros
poc chuc
pollo a la brasa
pollo asado
pollo guisado
pollo pibil
postre de natas
pozole rojo
pozole verde
queso fundido
rajas con crema
riñones al jerez
romeritos
salpicón
sobrebarriga
sopa azteca
sopa paraguaya
suspiro limeño
tacacá
tacos al pastor
tacos dorados
tacu tacu
tapado
tinga
tinga de pollo
torrejas
tres leches
tutu de feijão
vaca atolada
vatapá
vigorón
virado
xim xim
yuca con mojo
yuca frita
@ DISHFOOD noun mass ambiguous
chow-chow = chowchow
curtido
salsa macha
salsa roja
@ DISHFOOD PARTHEAD noun mass ambiguous
queso dip

# ---- france and the low countries -------------------------------------------
@ DISH noun
barquette
bitterbal : plural=bitterballen
bostock
bouchée
calisson
canelé
chaudrée
chouquette
choux bun
crêpe suzette
croque madame
croque monsieur
croquembouche
croustade
cruller
dacquoise
far breton
feuilletée
ficelle picarde
floating island
fougasse
fraisier
galantine
galette bretonne
gâteau : plural=gâteaux
genoise
gougère
île flottante
macaron
merveille
mille-feuille = millefeuille
oliebol : plural=oliebollen
opera cake
palmier
papillote
paris-brest : proper=1
petit four
pissaladière
pithivier
poffertje
quiche lorraine
religieuse
saint-honoré
savarin
stroopwafel
tarte tatin = tart tatin
tartiflette
tartine
tourte
tourtière
tuile
@ DISH noun mass
aligot
appeltaart
baba au rhum
boeuf à la mode
brandade
brouillade
bûche de noël
cargolade
celeriac rémoulade = celeri remoulade
charlotte russe
choux à la crème
coquilles saint-jacques = coquille st jacques
duck à l'orange
farçous
flammekueche = tarte flambée
galette des rois
gâteau au yaourt
gâteau basque
gratin dauphinois
gratin savoyard
jambon persillé
kouign-amann
leeks vinaigrette
millas
mont blanc : proper=2
mouclade
moules frites
moules marinière
oeufs en cocotte = eggs en cocotte
oeufs en meurette = eggs en meurette
pain au chocolat = pains au chocolat
pain d'épices
pain perdu
pan bagnat
parmentier
pâté chinois
pâté en croûte
pear belle hélène
petits pois à la française
poire belle hélène
pommes anna
pommes boulangère = boulangère potatoes, boulangere potatoes
pommes dauphine
pommes duchesse = duchess potatoes
pommes frites
pommes purée
pommes sarladaises
potée
poule au pot
poulet basquaise
poulet chasseur
poulet rôti
rillettes
riz au lait
salade lyonnaise
salade niçoise = salad niçoise
salade russe
snert
socca
sole meunière
steak au poivre
steak frites = steak and frites
steak haché
tarte au citron
tarte normande
truffade
@ DISH PARTHEAD noun mass
nougatine
@ DISHFOOD noun ambiguous
charlotte
madeleine
marquise
quenelle
vacherin
velouté
vol-au-vent
@ DISHFOOD noun mass ambiguous
béarnaise
crudités
escargots
mushroom duxelles
rouille
speculaas = speculoos

# ---- italy, spain, portugal -------------------------------------------------
@ DISH noun
affogato
bonet
bougatsa
cannoli : plural=cannoli
caprese salad
cassata
cataplana
ciambella
cotoletta
crostata
empanadilla
ensaimada
espetada
espresso martini
fiadone
francesinha
meatball sub
pandoro
panisse
piadina
pincho moruno : plural=morunos
pintxo
pizzetta
prego roll
rosquilla
schiacciata
semifreddo : plural=semifreddi
sfogliatella : plural=sfogliatelle
sformato
tramezzino : plural=tramezzini
zarzuela
zuccotto
@ DISH noun mass
açorda
agnolotti in brodo
ajoblanco
amatriciana
arrosto
arroz con costra
arroz de marisco
arroz de pato
arroz negro
baccalà mantecato
bagna cauda
bistecca alla fiorentina
bolo rei
bomboloni
braciole
brasato
brasato al barolo
bruschette
cacciatore = cacciatora
caldo gallego
callos
castagnaccio
chicken francese
chicken parmesan = chicken parm
churros con chocolate
ciambellone
coca de recapte
crema catalana
crespelle
eggplant parmesan = eggplant parm
ensalada mixta
escalivada
espinacas con garbanzos
fagioli all'uccelletto
fagottini
farinata
fideuà
fiori di zucca
fritole
frittelle
fritto misto
gambas al ajillo
gambas pil pil
gnocchi alla romana
gnudi
huevos a la flamenca
huevos rotos
insalata mista
insalata russa
insalata tricolore
involtini
lasagne verde
linguine alle vongole = linguine vongole, spaghetti alle vongole, spaghetti vongole
maiale al latte
maritozzi
marmitako
mozzarella in carrozza
pan de cádiz
panzarotti
panzerotti
papas arrugadas
parmigiana di melanzane
passatelli
pasta al forno
pasta alla gricia
pasta alla norma = pasta norma
pasta e ceci
pasta e patate
patatas a la riojana
patatas bravas
peixinhos da horta
penne alla vodka
pestiños
pipirrana
pizzelle
pizzoccheri
polenta e osei
pollo alla cacciatora
polvo à lagareiro
porchetta
porco à alentejana
pulpo a la gallega
rabo de toro
ragù alla bolognese
risi e bisi
risotto alla milanese
roscón de reyes
salmorejo
saltimbocca alla romana
scaloppine = scallopini
spanish rice : proper=1
struffoli
suppli
tagliata
tagliatelle al ragù
tarta de santiago
tigelle
tocino de cielo
torrijas
torta caprese
torta della nonna
torta pasqualina
torta sbrisolona
tortellini in brodo
tortilla española
toucinho do céu
trofie al pesto
vignarola
vitello tonnato
vodka pasta
zabaglione
zeppole
zuppa inglese
@ DISHFOOD noun ambiguous
antipasto : plural=antipasti
panettone
@ DISHFOOD noun mass ambiguous
boquerones
cantucci
grissini
panforte
pimientos de padrón = padrón peppers

# ---- germany, austria, switzerland, nordic countries ------------------------
@ DISH noun
apfelstrudel = apple strudel
black forest gateau = black forest cake : proper=2
brezel
cardamom bun
christstollen
dampfnudel : plural=dampfnudeln
dresden stollen : proper=1
fondue
frikadelle
kanelbulle : plural=kanelbullar
karelian pasty : proper=1
kleina : plural=kleinur
kohlroulade
kroppkaka : plural=kroppkakor
linzer cookie
linzer torte = linzertorte
lussekatt : plural=lussekatter
palatschinke : plural=palatschinken
pannenkoek : plural=pannenkoeken
princess cake
reindeer stew
rinderroulade
sachertorte
semla : plural=semlor
spritz cookie
szegediner goulash : proper=1
tiger cake
tosca cake
zimtstern : plural=zimtsterne
zopf
@ DISH noun mass
aebleskiver = æbleskiver
apfelkuchen
apfelküchle
aprikosenkuchen
arme ritter
bienenstich
biff à la lindström
birchermüesli = bircher muesli, bircher
boterkoek
bratkartoffeln
brunede kartofler
brunsviger
butterkuchen
currywurst
döppekooche
drømmekage
eierschecke
eintopf
erbsensuppe
fårikål
fischbrötchen
fiskeboller
flädlesuppe
flammkuchen
fleischpflanzerl
frankfurter kranz
frikadellen
frikadeller
geschnetzeltes
grießbrei
grünkohl
gubbröra
gurkensalat
himmel un ääd
jäger schnitzel = jägerschnitzel
janssons frestelse = jansson's temptation
kaiserschmarrn
kalops
karjalanpaisti
karjalanpiirakka
kartoffelpuffer
kartoffelsalat
käsekuchen
kladdkaka
klejner
knödel
königsberger klopse
köttbullar
kransekake
krumkake
labskaus
leberknödel
lebkuchen
lefse
leverpostej
lihapullat
makaronilaatikko
marillenknödel
maultaschen
mustikkapiirakka
obatzda
pariserbøf
pepparkakor
pfeffernüsse
pickert
plokkfiskur
prinsesstårta
pulla
raggmunk
reibekuchen
rindsrouladen
risalamande = ris a la mande
risengrynsgrød
rødgrød
rømmegrøt
rote grütze
rouladen
rüblitorte
schlachtplatte
schmarrn
schupfnudeln
schwarzwälder kirschtorte
schweinebraten
schweinshaxe
semmelknödel
skoleboller
smörgåstårta
smørrebrød
spekulatius
springerle
stegt flæsk
streuselkuchen
toast hawaii
toast skagen
topfenknödel
vanillekipferl
västerbottenpaj
wurstsalat
zwetschgendatschi
zwetschgenkuchen
zwiebelkuchen
zwiebelrostbraten
@ DISHFOOD noun ambiguous
stollen
@ DISHFOOD noun mass ambiguous
gravlax = gravadlax
lutefisk
pumpernickel bread

# ---- central and eastern europe, the balkans, greece ------------------------
@ DISH noun
babka
banitsa
blini
blintz : plural=blintzes
buchta : plural=buchty
crepe cake
dobos torte = dobostorta
egg and lemon soup
knish : plural=knishes
kolach
kolache
kugel
kugelhopf = gugelhupf
kulebyaka = coulibiac
kürtőskalács
mimosa salad
napoleon cake
olivier salad = olivye
pirog
plăcintă
sarma
shopska salad : proper=1
spanakopita
tiropita = tyropita
tufahija
wuzetka
zapiekanka
@ DISH noun mass
aubergine caviar
baked feta
beef olives
bejgli
belokranjska povitica
bourekas
briam
bryndzové halušky
bublanina
česnečka
cevapi = ćevapčići, cevapcici
chak-chak
chłodnik
ciorbă
ciorbă de burtă
ciorbă de perișoare
cozonac
deruny
diples
draniki
dressed herring
fasolakia
fasole batuta
galaktoboureko
gemista = yemista
gibanica
gigantes plaki
giouvarlakia = youvarlakia
golabki
grechka
gulasz
halászlé
horiatiki
hortobágyi palacsinta
hutsul banush
kapusta
karithopita
karpatka
kasha varnishkes
kissel
klopsiki
koliva
kopytka
kotlet schabowy
kourabiedes
kremna rezina
krofne
kulajda
kulich
kurnik
lahanodolmades
lahanorizo
lángos
lazanki
leniwe
lymonnyk
makowiec
mamaliga
medovik
melitzanosalata
mici
mizeria
mucenici
naleśniki
nokedli
oladi
orechovník
pączki
papanași
pashka = paskha
paska
pastitsio = pasticcio, pastitso
pelmeni
piernik
pirozhki = piroshki
placki ziemniaczane
pljeskavica
pogača
pogácsa
potica
prasopita
prebranac
proja
punjene paprike
racuchy
rakott krumpli
revani
rosół
salată de boeuf
salată de vinete
sarmale
selyodka pod shuboy
sernik
shkembe chorba
shuba
sirnica
smažený sýr
soutzoukakia
spanakorizo
svíčková
syrniki = sirniki
szarlotka
taramasalata = tarama salata, taramosalata
tavë kosi
tirokafteri = htipiti
töltött káposzta
töltött paprika
trdelník
tsoureki
túrós csusza
vánočka
vareniki = varenyky
vepřo knedlo zelo
vinegret
zacuscă
zagorski štrukli = štrukli
zrazy
đuveč
@ DISH PARTHEAD noun mass
ajvar
@ DISHFOOD noun mass ambiguous
skordalia

# ---- britain and ireland ----------------------------------------------------
@ DISH noun
aberdeen butterie : proper=1
almond slice
apple and blackberry crumble
arbroath smokie : proper=1
bacon and egg pie
bacon roll
bakewell pudding : proper=1
bakewell slice : proper=1
banbury cake : proper=1
banoffee pie
bath bun : proper=1
battenberg = battenberg cake : proper=1
beef and ale pie
bridie
butterfly cake
cabinet pudding
cheese and onion pasty
cheese and onion pie
cheese and potato pie
cheese straw
chelsea bun : proper=1
chicken and leek pie
chicken and mushroom pie
chip butty
clootie dumpling
coffee and walnut cake
cottage loaf : plural=loaves
cream bun
cream horn
cullen skink tart : proper=1
cumberland sausage ring : proper=1
custard slice
dorset apple cake : proper=1
drop scone
dropped scone
dublin coddle : proper=1
dundee cake : proper=1
eccles cake : proper=1
egg and cress sandwich
empire biscuit
eve's pudding : proper=1
fidget pie
forfar bridie : proper=1
fruit fool
girdle scone
glamorgan sausage : proper=1
gooseberry fool
gypsy tart
ham and pea soup
hog roast
hog's pudding
homity pie
iced finger
jam roly-poly : plural=roly-polies
lardy cake
leek and potato soup
madeira cake : proper=1
manchester tart : proper=1
manx broth : proper=1
marble cake
mixed grill
mock turtle soup
pea and ham soup
plum duff
potato and leek soup
potato farl
queen cake
raised pie
rum baba
saffron bun
sausage plait
scotch pancake : proper=1
scotch pie : proper=1
shooter's sandwich
simnel cake
singing hinny = singin' hinny
sly cake
soda farl
sponge pudding
squash and lentil soup
stargazy pie = stargazey pie
steak and ale pie
steak and kidney pie
steak and kidney pudding
steak bake
steamed sponge
stilton and broccoli soup
stottie = stotty
stuffed marrow
summer pudding
sussex pond pudding : proper=1
tea loaf : plural=loaves
toffee apple
treacle sponge
ulster fry : proper=1
vanilla slice
veal and ham pie
veggie roast
victoria sandwich cake : proper=1
welsh rabbit : proper=1
wigan kebab : proper=1
@ DISH noun mass
angels on horseback
bacon and cabbage
bara brith
barmbrack = barm brack
beans on toast
boiled beef and carrots
boxty
brack
bread and dripping
cauliflower cheese = cauli cheese
cheese on toast
chips and cheese
chips and gravy
clapshot
colcannon
coronation chicken
cranachan
devils on horseback
egg and chips
egg mayonnaise = egg mayo
eggs and soldiers
eggy bread
faggots and peas
full irish : proper=2
full scottish : proper=2
full welsh : proper=2
gammon and pineapple
grasmere gingerbread : proper=1
hot buttered toast
jellied eels
liver and bacon
liver and onions
maids of honour
mince and potatoes
minted peas
mushroom on toast
mushrooms on toast
mushy peas
neeps and tatties
pan haggerty
panackelty = panackerty
pie and mash
pie and peas
pigs in blankets
ploughman's lunch = ploughman's
poached egg on toast = poached eggs on toast
porridge bread
potted beef
potted crab
potted shrimp = potted shrimps
queen of puddings
roll and sausage
rumbledethumps
sausage and mash
savoury mince
scallops and black pudding
scrambled eggs on toast = scrambled egg on toast
skirlie
spotted dick
steak and chips
strawberries and cream
treacle toffee
@ DISH PARTHEAD noun
lemon drizzle
@ DISHFOOD noun ambiguous
bramble jelly
bread and butter pickle
cream slice
custard cream
fruit loaf : plural=loaves
iced bun
macaroon
malt loaf : plural=loaves
oatcake
roly-poly : plural=roly-polies
teacake = tea cake
@ DISHFOOD noun mass ambiguous
fried bread
orange squash
potato bread
wheaten bread

# ---- united states and canada -----------------------------------------------
@ DISH noun
ambrosia salad
angel food cake
apple brown betty
apple crisp
apple pan dowdy = apple pandowdy
armadillo egg
bierock
black and white cookie
black bottom pie
blooming onion
blt : plural=blts
blueberry grunt
boston cream pie : proper=1
boudin ball
bumbleberry pie
bumpy cake
bundt cake
california roll : proper=1
cheese ball
cheeseburger soup
cheesesteak
chess pie
chicken bog
chicken fried steak
chiffon cake
chili dog
chopped cheese
clam bake = clambake
congealed salad
cookie bar
cookie dough truffle
corn dog
cowboy cookie
crab louie salad
crawfish boil
crazy cake
denver omelette = denver omelet : proper=1
depression cake
devil's food cake
dirt cake
dirt pudding
dump cake
dutch baby : plural=babies proper=1
figgy duff
french dip : proper=1
french silk pie : proper=1
fruit salsa
frybread
funnel cake
garlic knot
glazed ham
grasshopper pie
green goddess salad
ham and bean soup
ham loaf : plural=loaves
hermit cookie
hoagie
horseshoe sandwich
hotdish
hummingbird cake
ice cream float
impossible pie
jambuster
jiggs dinner : proper=1
joe frogger
juicy lucy
key lime pie : proper=1
king cake
kitchen sink cookie
knoephla soup
lady baltimore cake : proper=2
lane cake : proper=1
layer cake
layered salad
lemon bar
lemon square
lobster roll
loose meat sandwich
low country boil
magic bar
maple pie
million dollar pie
mississippi mud cake : proper=1
mississippi mud pie : proper=1
mississippi roast : proper=1
monte cristo : proper=2
montreal bagel : proper=1
mud pie
muffuletta = muffaletta
nanaimo bar : proper=1
oatmeal scotchie
patty melt
peach crisp
peanut butter ball
peanut butter bar
peanut butter blossom
pecan tassie
philly cheesesteak = philly cheese steak : proper=1
pig in a blanket
pinwheel sandwich
pizza roll
popcorn ball
popover
poundcake = pound cake
pudding cake
puffed wheat square
pumpkin bar
pumpkin roll
quick bread
rappie pie
red flannel hash
red velvet cake
rhubarb crisp
runza
salisbury steak : proper=1
salmon patty = salmon patties
saskatoon pie : proper=1
scotcheroo
seafood boil
senate bean soup
seven-layer bar
seven-layer salad
sheet cake
shoo-fly pie = shoofly pie
shortcake
skillet cookie
skillet lasagna
smash burger = smashburger
snack cake
sonoran hot dog : proper=1
stuffed bell pepper
stuffed mushroom
sub sandwich
submarine sandwich
sunshine salad
taco casserole
taco pie
taco salad
tamale pie
texas sheet cake : proper=1
thimble cookie
three bean salad
thumbprint cookie
tortilla pinwheel
tuna melt
wacky cake
walking taco
watergate salad : proper=1
wedge salad
whoopie pie
yule log
zucchini boat
@ DISH noun mass
artichoke dip
avocado toast
bacon and eggs
baked brie
baked oatmeal
baked oats
bananas foster : proper=2
barbecue ribs = bbq ribs
bean dip
beef on weck
beef tips and gravy
biscuits and gravy
blackened catfish
blackened fish
boston baked beans : proper=1
boston brown bread : proper=1
buffalo chicken dip
candied yams
caramel corn
caramel popcorn
cheese grits
cheesy garlic bread
cherries jubilee
chicken and biscuits
chicken and waffles
chicken divan
chicken fingers
chicken spaghetti
chili mac
chipped beef on toast
cinnamon toast
clam dip
clams casino
collard greens and ham hocks
cowboy beans
cowboy caviar
crab dip
creamed chipped beef
creamed onions
creamed peas
cuban black beans : proper=1
death by chocolate
dilly beans
egg in a hole
eggs in purgatory
eggs sardou : proper=2
fried catfish
fried chicken
fried green tomatoes
fried okra
fried pickles
friendship bread
fruit leather
funeral potatoes
goetta
grillades and grits
grits and eggs
harvard beets : proper=1
hoppin' john = hopping john
italian beef : proper=1
kalua pork = kalua pig
kansas city ribs : proper=2
kettle corn
lobster newburg : proper=2
loco moco
loosemeat
maple taffy
maque choux
marry me chicken
mashed turnips
matzo brei
million dollar spaghetti
oysters rockefeller : proper=2
pasta fagioli
peanut brittle
peanut butter and jelly = pb and j, pb&j, pbj
pecan sandies
penuche
peppermint bark
pickle dip
pigs in a blanket
pimento cheese
pizza dip
popcorn chicken
pork and beans
potlikker
poutine râpée
pull-apart bread
pulled beef
pulled chicken
pumpkin bread
puppy chow
red beans and rice
saltine toffee
seven-layer dip
shrimp and grits
shrimp creole
shrimp dip
smothered chicken
smothered pork chops
snow cream
snow ice cream
southern fried chicken
spinach dip
spoon bread = spoonbread
steak and eggs
stuffed cabbage
stuffed shells
sweet tea
swirl bread
taco dip
tarte au sucre
texas caviar : proper=1
texas toast : proper=1
tomato aspic
toutons
vegetable dip
zucchini bread
@ DISH PARTHEAD noun mass
oyster dressing
red eye gravy
rice dressing
sawmill gravy
@ DISHFOOD noun ambiguous
benedict
buttermilk biscuit
chicken nugget
chicken tender
cranberry relish
gingersnap
peanut butter cup
soft pretzel
@ DISHFOOD noun mass ambiguous
baked ham
beef jerky
brown bread
cheese dip
cold brew
corn on the cob
cornbread dressing
cornbread stuffing
cranberry sauce
popcorn
potato skins = potato skin
ranch dip
sausage gravy
scrapple
snack mix
taffy
white bread
@ DISHFOOD PARTHEAD noun mass ambiguous
apple butter

# ---- australia, new zealand, the pacific ------------------------------------
@ DISH noun
afghan biscuit
anzac slice : proper=1
apricot slice
aussie burger
bacon and egg roll
beer damper
caramel slice
carpetbag steak
cheese and bacon roll
cheese roll
chicken schnitty = schnitty
chocolate crackle
chocolate ripple cake
coconut slice
copha slice
curried egg sandwich
frog cake
fruit slice
fudge slice
ginger kiss
ginger slice
hedgehog slice
honey joy
impossible quiche
jaffle
jelly slice
lolly slice
louise cake : proper=1
louise slice : proper=1
lu'au stew = luau stew
lumberjack cake
malt slice
mince and cheese pie
neenish tart = nenish tart
peppermint slice
pie floater
pinwheel scone
sausage sizzle
savoury scroll
tan slice
tan square
toheroa fritter
whitebait patty : plural=patties
yoyo biscuit = yo-yo biscuit
zucchini slice
@ DISH noun mass
apricot chicken
chicken salt chips
coconut ice
curried egg
curried mince
curried prawns
curried sausages
damper bread
fairy bread
ginger crunch
hangi
kokoda
lemon delicious
lovo
mince on toast
oka i'a
onion dip
palusami
pani popo
poi
puha and pork
rewena bread
salmon mornay
sapasui
sausage in bread
tuna mornay
@ DISHFOOD noun mass ambiguous
corned silverside
hokey pokey

# ---- breads, buns, scones, crackers -----------------------------------------
@ DISH noun
artisan loaf : plural=loaves
banana loaf : plural=loaves
batbout
batch loaf : plural=loaves
bialy : plural=bialys
bolani
bolo bao
boule
campagne loaf : plural=loaves
cheese loaf : plural=loaves
cheese twist
chelsea loaf : plural=loaves
cinnamon scroll
cob loaf : plural=loaves
date and walnut loaf : plural=loaves
date loaf : plural=loaves
devonshire split : proper=1
dutch crunch roll
fan tan roll
fig roll
finger bun
flaky biscuit
garlic bread twist
griddle cake
khameeri roti
lemon loaf : plural=loaves
malted loaf : plural=loaves
marraqueta
milk loaf : plural=loaves
milk roll
morning roll
muffin loaf : plural=loaves
nut loaf : plural=loaves
pistolet
poppy seed roll
pretzel bite
refrigerator roll
sally lunn : proper=2
sandwich loaf : plural=loaves
sippet
spelt loaf : plural=loaves
spiced bun
staffordshire oatcake : proper=1
sultana loaf : plural=loaves
sweet bun
tin loaf : plural=loaves
viennese whirl
white loaf : plural=loaves
wholemeal loaf : plural=loaves
@ DISH noun mass
anadama bread
buttermilk bread
carta di musica
cheese bread
cloud bread
coconut bread
cottage bread
cranberry orange bread
cuban bread : proper=1
dutch oven bread
easter bread : proper=1
fry jacks
frying pan bread
garlic and cheese bread
garlic dough balls = dough balls
griddle bread
hard dough bread = hardo bread
herb bread
hokkaido milk bread : proper=1
honey wheat bread
laffa
lavosh
limpa
matnakash
nut bread
oatmeal bread
onion bread
pane pugliese
party bread
saj bread
salt-rising bread
scofa bread
skillet bread
stuffed bread
tangzhong bread
tear-and-share bread = tear and share
tiger bread
vánočka bread
@ DISHFOOD noun ambiguous
baguette
bolillo
brioche bun
brioche loaf : plural=loaves
burger bun
cheese biscuit
ciabatta roll
crescent roll
crispbread
croissant
crusty loaf : plural=loaves
crusty roll
farmhouse loaf : plural=loaves
finger roll
flour tortilla
french loaf : plural=loaves proper=1
fruit bun
garlic naan
granary loaf : plural=loaves
hawaiian roll : proper=1
hot dog bun
kaiser roll
naan bread
parker house roll : proper=1
potato roll
pretzel bun
rye loaf : plural=loaves
seeded loaf : plural=loaves
soft roll
sourdough loaf : plural=loaves
sticky bun
sweet roll
yeast roll
@ DISHFOOD noun mass ambiguous
beer bread
biscotti
cinnamon bread
crackers
crusty bread
french bread : proper=1
fruit bread
gua bao
lavash
matzo = matzah
milk bread
multigrain bread
oat bread
olive bread
pita bread
pocket bread
pugliese
pumpernickel
raisin bread
rye bread
sandwich bread
shokupan
sourdough bread
spelt bread
tomato bread
turkish bread : proper=1
walnut bread
wheat bread
white sandwich bread
wholemeal bread

# ---- eggs and breakfast -----------------------------------------------------
@ DISH noun
acai bowl
bacon and egg muffin
breakfast bake
breakfast bowl
breakfast wrap
brekkie wrap
dippy egg = dippy eggs
egg and bacon pie
egg bite
egg muffin cup
egg roll-up
fruit and yogurt parfait
griddlecake
hasty pudding
hoecake
migas taco
parfait
pinhead porridge
protein ball
shirred egg
silver dollar pancake
smoothie bowl
soufflé omelette
western omelette = western omelet
@ DISH noun mass
bagel and lox
baked eggs = baked egg
basted eggs
boiled egg and soldiers
breakfast potatoes
coddled eggs = coddled egg
curried eggs
eggs royale
green eggs
ham and eggs
jammy eggs
waffles and syrup
@ DISHFOOD noun ambiguous
granola bar
muesli bar

# ---- salads and slaws -------------------------------------------------------
@ DISH noun
blt salad
brussels sprout slaw : proper=1
carrot and raisin salad
chef salad = chef's salad
egg and potato salad
garden salad
grain salad
house salad
mixed leaf salad
pear and walnut salad
puy lentil salad : proper=1
ranch salad
salad sandwich
salad wrap
side salad
southwest salad
summer salad
superfood salad
tomato and onion salad
tricolore salad
winter salad
winter slaw
@ DISH noun mass
balela
salade composée
salata
@ DISH PARTHEAD noun mass
sumac onions
@ DISHFOOD noun ambiguous
mango salsa
pineapple salsa
tomato salsa

# ---- sauces, relishes, pickles and preserves made as recipes ----------------
@ DISH noun
apple and sage jelly
burger relish
mustard pickle
nut roast
refrigerator pickle
rhubarb and ginger jam
rosehip jelly
rowan jelly
three-fruit marmalade
watermelon rind pickle
@ DISH noun mass
gunpowder podi
@ DISH PARTHEAD noun
quick pickle
rosehip syrup
@ DISH PARTHEAD noun mass
adjika = ajika
chimichurri
matbucha
mojo rojo
mojo verde
passionfruit curd
pickled red cabbage
romesco
sunday gravy : proper=1
tkemali
tomato kasundi = kasundi
toum
whipped feta
@ DISHFOOD noun ambiguous
apple jelly
apricot jam
aubergine pickle
beet relish
blackberry jam
blueberry jam
brandy snap
cherry jam
chow-chow relish
corn relish
cranberry orange relish
damson jam
fig jam
fruit compote
fruit curd
garlic pickle
ginger jam
gooseberry jam
grape jelly
guava jelly
jalapeño jelly
lemon pickle
lime pickle
mango jam
mango pickle
mint jelly
mixed pickle
olive tapenade
peach jam
pepper jelly
pepper relish
pickled beet
pickled chilli
pickled walnut
plum jam
quince jelly
raspberry jam
rhubarb jam
seville orange marmalade : proper=1
strawberry jam
sweet pickle
tomatillo salsa
tomato relish
zucchini relish
@ DISHFOOD noun mass ambiguous
bacon jam
brandy butter
cacik
chilli jam = chili jam
confit garlic = garlic confit
cultured butter
kraut
lemon curd
lime curd
lutenitsa
onion jam
pindjur
pumpkin butter
sloe gin
tomato jam
@ DISHFOOD PARTHEAD noun ambiguous
pickled carrot
pickled cucumber = quick-pickled cucumber
pickled radish
pickled red onion
@ DISHFOOD PARTHEAD noun mass ambiguous
chilli crisp = chili crisp, chile crisp
dukkah
giardiniera
labneh
marinara
mostarda
pickled cabbage
pickled daikon

# ---- cakes, biscuits, slices ------------------------------------------------
@ DISH noun
almond croissant
almond thin
angel wing
apple turnover
apricot bar
banoffee cake
bee sting cake
berliner
butterhorn
celebration cake
cherry bakewell
cherry slice
chocolate bundt
chocolate log
chocolate roll
chocolate slice
chocolate truffle
coconut loaf : plural=loaves
coffee cake muffin
cookies and cream cheesecake
crinkle cookie
date bar
date slice
date square
drip cake
drizzle cake
earl grey cake : proper=2
easter biscuit : proper=1
fairy cake
fat bomb
florentine
flourless chocolate cake
fondant fancy : plural=fancies
fork biscuit
french fancy : plural=fancies proper=1
friand
fruit bar
garibaldi biscuit
gingerbread house
gingerbread man : plural=men
iced biscuit
jam drop
jam slice
jam thumbprint
kitchener bun : proper=1
kringle
kuchen
lava cake
melting moment
mexican wedding cookie : proper=1
molten chocolate cake = molten lava cake
monster cookie
mud cake
mug cake
nut bar
nut slice
oat bar
orange and almond cake
passion cake
pastry horn
pavlova wreath
pinwheel cookie
poke cake
princess torte
raspberry bar
raspberry slice
rock bun
rum and raisin cake
sandwich cake
stained glass biscuit
torte
tottenham cake : proper=1
viennese biscuit
viennese finger
wedding cake
zebra cake
@ DISH noun mass
bolo de cenoura
castella
crostoli
langue de chat
millionaire's shortbread
ontbijtkoek
ricciarelli
rugelach
tea bread
@ DISH PARTHEAD noun
lemon sponge
vanilla sponge
@ DISHFOOD noun ambiguous
angel cake
bourbon biscuit
chocolate sponge
fortune cookie
ginger biscuit
ginger nut
ladyfinger = lady finger
oat biscuit
shortbread biscuit
shortbread finger
sponge cake
tea biscuit
@ DISHFOOD noun mass ambiguous
amaretti

# ---- pies, tarts and pastries -----------------------------------------------
@ DISH noun
bacon and egg tart
cheese and onion tart
cheese puff
cinnamon swirl
cream cheese danish
curried chicken pie
danish pastry : plural=pastries proper=1
family pie
filo parcel
fish parcel
free-form tart
fruit crumble
hand pie
hand-raised pie
jalousie
jamaican beef patty : plural=patties proper=1
lattice pie
maple pecan pastry : plural=pastries
maple walnut pie
mushroom wellington : proper=2
pastry parcel
pastry pinwheel
pastry twist
pork and apple pie
rustic tart
slab pie
spinach and feta pie
summer tart
veggie wellington
@ DISH noun mass
salmon en croûte

# ---- puddings, creams and fruit ---------------------------------------------
@ DISH noun
apple betty
apple snow
baked apple
berry compote
berry crisp
berry crumble
berry fool
blackberry crumble
blueberry buckle
blueberry crisp
bombe alaska
bread and butter pud
cheesecake bar
cherry crumble
christmas pud : proper=1
coffee jelly
college pudding
diplomat pudding
figgy pudding
fruit crisp
fruit jelly
fruit skewer
golden syrup sponge
jam roll
key lime bar
knickerbocker glory : plural=glories
mango fool
meringue nest
no-churn ice cream
orange fool
pavlova nest
pear crumble
plum crumble
rhubarb crumble
rhubarb fool
self-saucing pudding
strawberry fool
tipsy cake
tipsy pudding
tutti frutti ice cream
vanilla custard
winter fruit compote
yorkshire pudding wrap : proper=1
@ DISH noun mass
baked peaches
baked pears
bavarian cream
bavarois
blancmange
crema pasticcera
flummery
frumenty
grilled peaches
jelly and ice cream
peaches and cream
poached apricots
poached fruit
poached peaches = poached peach
poached pears = poached pear
poached plums
poached quince
poached rhubarb
pots de crème = pot de crème
raspberry ripple
rhubarb and custard
roasted plums
roasted rhubarb
stewed fruit
stewed plums
@ DISH PARTHEAD noun mass
macerated strawberries
stewed rhubarb
@ DISHFOOD noun mass ambiguous
ambrosia
frozen yogurt = frozen yoghurt, froyo
stewed apple = stewed apples
vanilla ice cream

# ---- sweets and snacks ------------------------------------------------------
@ DISH noun
candy apple
caramel apple
cheese crisp
crackle slice
date ball
energy ball
energy bar
energy bite
fruit roll-up
granola cluster
mendiant
mint patty : plural=patties
nut cluster
peppermint cream
sesame snap
til ladoo
turtle candy
@ DISH noun mass
butter toffee
buttered popcorn
chocolate salami
churchkhela
coconut candy
crack candy
devilled nuts
dodol
edinburgh rock : proper=1
gajak
honeycomb toffee
kendal mint cake : proper=1
maple candy
mazapán
pâte de fruit
puff candy
saltwater taffy = salt water taffy
scottish tablet : proper=1
sponge candy
sugar mice = sugar mouse
yema
zefir
@ DISH PARTHEAD noun mass
candied bacon
@ DISHFOOD noun ambiguous
boiled sweet
cheese cracker
fruit pastille
jelly sweet
lollipop
peppermint patty : plural=patties
@ DISHFOOD noun mass ambiguous
almond bark
almond brittle
barley sugar
bombay mix : proper=1
butterscotch
candied nuts
candied orange peel
candied walnuts
chikki
chocolate bark
cinder toffee
cotton candy
gulkand
halva
hard candy
kale chips
lokum
membrillo
nougat
nut brittle
party mix
pita chips
plantain chips
potato crisps
roasted chickpeas
sesame brittle
spiced nuts
tortilla chips
turrón
vegetable crisps

# ---- roasts, grills and plates of meat --------------------------------------
@ DISH noun
chicken escalope
chicken skewer
crown roast
dirty burger
lamb skewer
meat and potato pie
pork escalope
sausage and bean casserole
stuffed chicken breast
tri-tip roast
turkey chili
veal escalope
@ DISH noun mass
barbecue chicken = bbq chicken
barbecued chicken
beef skewers
beer-can chicken
braised lamb shanks = braised lamb shank
braised oxtail
braised short ribs
brick chicken
broasted chicken
butter-basted steak
chicken and chips
chicken balls
chicken cordon bleu
chicken diane
chicken provençal
chicken under a brick
corned beef and cabbage
crispy pork belly
crown of turkey
devilled chicken
devilled kidneys
garlic butter steak
glazed gammon
greek lamb : proper=1
hunter's chicken
lemon and herb chicken
lemon pepper wings
liver pâté
london broil : proper=1
meat and two veg
mechoui lamb
oven-fried chicken
pepper-crusted steak
pork chops and applesauce
roast gammon
roast goose
roast ham
roast leg of lamb
roast partridge
roast pheasant
roast pork belly
roast rack of lamb
roast rib of beef
roast venison
slow-roast lamb = slow-roasted lamb
slow-roast pork = slow-roasted pork
smothered steak
steak tartare
sticky chicken
sticky ribs
sticky wings
stuffed breast of lamb
stuffed pork loin
stuffed shoulder of lamb
surf and turf
tandoori lamb chops
teriyaki beef
teriyaki chicken
tripe and onions
veal parmesan = veal parmigiana, veal parm
wood-fired chicken
@ DISHFOOD noun mass ambiguous
boiled ham
burnt ends
grilled chicken
haggis
honey roast ham
pork crackling
roast duck
roast pork
roast turkey
rotisserie chicken

# ---- fish and seafood -------------------------------------------------------
@ DISH noun
coquille
dressed crab
fish cutlet
fisherman's pie
fisherman's stew
rollmop
salmon loaf : plural=loaves
tuna patty : plural=patties
@ DISH noun mass
baked fish
baked salmon
battered cod
battered fish
brandade de morue
ceviche mixto
coconut prawns
crispy-skin salmon
escabeche fish
fish en papillote
fish meunière
fried whitebait
garlic butter prawns
garlic prawns
grilled sardines
kipper pâté
mackerel pâté
pan-seared salmon
pan-seared scallops = seared scallops
poached haddock
poached salmon
popcorn shrimp
prawn masala
psarosoupa
roast cod
roast salmon
salmon pâté
scampi and chips
seared tuna
soused herring = soused herrings
stuffed squid
tandoori prawns
trout almondine = trout amandine
tuna mayo
tuna tartare
@ DISHFOOD noun ambiguous
fish stick
@ DISHFOOD noun mass ambiguous
baccalà
baked cod
calamari
grilled salmon
kippers
whitebait

# ---- vegetables and plain sides ---------------------------------------------
@ DISH noun
baked sweet potato : plural=potatoes
cauliflower steak
curried parsnip soup
lentil loaf : plural=loaves
lyonnaise potato : plural=potatoes
minestra
stuffed artichoke
stuffed aubergine
stuffed courgette
stuffed potato : plural=potatoes
stuffed squash
stuffed tomato : plural=tomatoes
twice-baked soufflé
vegetable crumble
@ DISH noun mass
braised cabbage
braised celery
braised fennel
braised leeks
braised lentils
braised lettuce
braised peas
braised red cabbage
broccoli cheese
buttered cabbage
buttered carrots
buttered corn
buttered leeks
buttered noodles
buttered peas
buttered potatoes
carrot and swede mash
cauliflower mash
cauliflower wings
cheesy chips
cheesy mash
cheesy rice
chilli cheese toast
cilantro lime rice = coriander lime rice
corn ribs
creamed cabbage
creamed kale
creamed leeks
creamed mushrooms
creamed peas and onions
creamy mash
creamy mushrooms
creamy polenta
crispy potatoes
curried cauliflower
curried chickpeas
curried lentils
eggplant dip
fondant potatoes = fondant potato
fried cabbage
fried potatoes
game chips
glazed carrots
glazed parsnips
glazed turnips
green beans almondine = green beans amandine
grilled vegetables = grilled veg, grilled veggies
hand-cut chips
home fries
loaded skins
mash and gravy
mashed carrot and swede
mashed carrots
mushroom pâté
mustard mash
oven fries
parmentier potatoes
parsnip crisps
parsnip mash
pease porridge
popcorn cauliflower
potato au gratin = potatoes au gratin, au gratin potatoes
potato purée
potato wedges = potato wedge
ranch potatoes
roast asparagus = roasted asparagus
roast broccoli = roasted broccoli
roast brussels sprouts = roasted brussels sprouts
roast cabbage = roasted cabbage
roast fennel = roasted fennel
roast new potatoes
roast parsnips = roasted parsnips, roast parsnip
roast root vegetables = roasted root vegetables, roasted roots
roast sweet potatoes = roasted sweet potatoes, roast sweet potato
saffron rice
sarladaise potatoes
sauté potatoes = sautéed potatoes
scalloped corn
spiced red cabbage
stuffed courgette flowers
swede mash
sweet and sour cabbage
sweet potato chips
sweet potato mash
tomatoes on toast
triple-cooked chips
turnip mash
vegetable rice
yuk sung
zucchini noodles = zoodles
@ DISH PARTHEAD noun mass
cauliflower purée
celeriac purée
@ DISHFOOD noun ambiguous
cabbage
cauliflower
potato : plural=potatoes
sweet potato : plural=potatoes
@ DISHFOOD noun mass ambiguous
asparagus
beets
black-eyed peas
boiled rice
broccoli
brown rice
brussels sprouts
butter beans
carrot purée
celeriac mash
chickpeas
corn
jasmine rice
kale
lentils
mashed cauliflower
mashed swede
mashed sweet potatoes = mashed sweet potato
mixed vegetables = mixed veg, mixed veggies
new potatoes
oven chips
parsnip purée
peas
pilau rice
rapini
red cabbage
runner beans
spinach
spring greens
steamed rice
string beans
sweetcorn
white rice
wild rice
yellow rice

# ---- pasta, rice and noodles ------------------------------------------------
@ DISH noun
bolognaise = bolognaise sauce
farrotto
lasagne roll-up = lasagna roll-up
orzotto
rice ball
risotto cake
@ DISH noun mass
arrabbiata pasta
bacon and pea pasta
baked spaghetti
buttered pasta
carbonara pasta
cheesy pasta
curried rice
fried noodles
garlic butter pasta
goulash pasta
green rice
one-pot pasta
pancit noodles
pasta alla trapanese
pasta and meatballs
pasta chips
pasta pomodoro = pasta al pomodoro, spaghetti al pomodoro
peanut noodles
pesto pasta = pasta al pesto, pasta pesto
pizza pasta
risotto primavera
savannah red rice : proper=1
singapore mei fun : proper=1
spaghetti napoli
spinach and ricotta cannelloni
stuffed pasta shells
tetrazzini
@ DISHFOOD noun ambiguous
rice cake
@ DISHFOOD noun mass ambiguous
cold noodles

# ---- sandwiches, wraps, pizzas and small plates -----------------------------
@ DISH noun
canapé
club wrap
crab puff
cucumber bite
deep-dish pizza
detroit-style pizza : proper=1
dough stick
falafel wrap
gyro wrap
ham and cheese sandwich
ham and cheese toastie
italian sub : proper=1
jalapeño popper
jibarito
kebab roll
lettuce wrap
margherita pizza = pizza margherita
meat feast pizza
meatball sandwich
mozzarella stick
new york-style pizza : proper=2
open-faced sandwich = open-face sandwich
open sandwich : plural=sandwiches
pan pizza
pita pocket
pitta pocket
pizza pocket
puff pastry bite
ribbon sandwich
salad roll
sando
sicilian pizza : proper=1
skillet pizza
spinach puff
street taco
stuffed date
stuffed jalapeño
stuffed pita
stuffed vine leaf : plural=leaves
sushi burrito
sushi roll
turkey club
wood-fired pizza
@ DISH noun mass
bacon-wrapped dates
baked camembert
blooming bread
fried brie
fried halloumi
garlic pizza bread
pizza bianca
pizza marinara
pizza rustica
pizza toast
scotch woodcock : proper=1
shrimp toast
toasted cheese
@ DISHFOOD noun ambiguous
tortilla wrap

# ---- curries and everyday mains named by what is in them --------------------
@ DISH noun
bean chili
beef chili
carrot and coriander soup
chicken and rice soup
corn and crab soup
garden vegetable soup
pea and mint soup
potato and cauliflower curry
sausage and kale soup
tomato and basil soup
white chicken chili
winter vegetable soup
@ DISH noun mass
chilli non carne
greek chicken : proper=1
mushroom masala
pathia
phaal
sag aloo
tarka chana

# ---- drinks made as recipes -------------------------------------------------
@ DISH noun
agua fresca
batida
bellini
bloody mary : proper=2
boulevardier
bourbon sour
caipirinha
chocolate shake
cranberry spritzer
cucumber cooler
daiquiri
frappé
french martini : proper=1
fresh lime soda
gin fizz
horchata latte
hot toddy : plural=toddies
iced latte
iced matcha latte
irish coffee : proper=1
kir royale : plural=royales
limeade
mai tai
malt shake
mango shake
matcha latte
michelada
mint julep
mojito
moscow mule : proper=1
negroni
piña colada
pisco sour
pumpkin spice latte
root beer float
rosé spritzer
sazerac
sherbet drink
slushie = slushee
strawberry shake
tamarind drink
tequila sunrise
tom collins : proper=2
turmeric latte
vanilla shake
watermelon cooler
whiskey sour = whisky sour
wine spritzer
@ DISH noun mass
agua de jamaica
aguapanela
api morado
ayran
barley water
boba tea
buttered rum
café de olla
chicha morada
coquito
cucumber water
dalgona coffee
doogh
elderflower champagne
ginger cordial
glögg
glühwein
golden milk
hot apple cider
hot cider
hot cocoa
jaljeera
lemon cordial
lemon squash
limonana
long island iced tea : proper=2
masala milk
milk tea
mulled apple juice
mulled cider
nimbu pani
planter's punch
ponche
raspberry cordial
rhubarb cordial
rhubarb gin
royal milk tea
rumtopf
sangrita
sima
spiced cider
sun tea
switchel
teh tarik
tejuino
tepache
thai tea : proper=1
turkish coffee : proper=1
whipped coffee
@ DISHFOOD noun ambiguous
cappuccino
elderflower fizz
mimosa
white russian : proper=1
@ DISHFOOD noun mass ambiguous
advocaat
cold brew coffee
eggnog = egg nog
elderflower cordial
fruit punch
hibiscus tea
iced coffee
kvass
lime cordial
watermelon juice

# ----  -----------------------------------------------------------------------
@ DISH noun
hot dish
@ DISH noun mass
chakli
murukku
@ DISHFOOD noun ambiguous
aubergine
@ DISHFOOD noun mass ambiguous
barley
beetroot
bok choy
bulgur
courgettes
eggplant
leeks
lima beans
mushrooms
okra
parsnips
pinto beans
plantains
quinoa
squash
swede
swiss chard : proper=1
turnips
yams
zucchini

# ---- plain plates and other names -------------------------------------------
@ DISHFOOD noun mass ambiguous
carrots
