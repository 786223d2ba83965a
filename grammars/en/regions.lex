# Words that tell where a cook is at home. Every word in a script counts once
# for each time that it is said, a unit only where it measures.
#
# region=  us uk: which of the two systems is spoken
#          ca au in: a country of its own, which outweighs them from 6 on
# weight=  1 without one

# ---- units, by their names in tables/units.tsv -----------------------------

@ REGIONAL region=us
cup : weight=2
stick : weight=3
quart : weight=3
ounce : weight=2
pound : weight=2
fluid ounce
gallon : weight=2
inch
fahrenheit : weight=4

@ REGIONAL region=uk
gram : weight=3
kilogram : weight=3
millilitre : weight=3
litre : weight=2
celsius : weight=4
centimetre : weight=2
millimetre : weight=2
decilitre : weight=3
centilitre : weight=2
dessertspoon : weight=3
gas mark : weight=6

# ---- American ----------------------------------------------------------------

@ REGIONAL region=us noun
mom : weight=3
mommy : weight=2
buck : weight=2
dollar : weight=2
cent : weight=1
skillet : weight=2
baking sheet
cookie sheet : weight=2
broiler : weight=3
stovetop
countertop
trash can : weight=2
garbage can
faucet : weight=2
paper towel
plastic wrap : weight=2
wax paper : weight=2
dutch oven
green onion
scallion : weight=2
eggplant
zucchini
bell pepper : weight=2
beet
shrimp
english cucumber
roma tomato
graham cracker : weight=3
bouillon cube : weight=2
store

@ REGIONAL region=us mass
cilantro : weight=3
arugula : weight=3
ground beef : weight=3
ground turkey : weight=3
ground pork : weight=2
ground chuck : weight=3
all purpose flour = all-purpose flour, ap flour : weight=3
cornstarch : weight=3
powdered sugar : weight=3
confectioners sugar = confectioners' sugar : weight=3
granulated sugar
baking soda
heavy cream : weight=3
heavy whipping cream : weight=3
half and half : weight=3
kosher salt : weight=3
molasses
shortening
canola oil : weight=2
ketchup
saltines : weight=3
broil : weight=3
broiled : weight=2
y'all = yall, ya'll : weight=3
gotten : weight=2
favorite : weight=2
flavor : weight=2
color : weight=2
neighbor : weight=2
thanksgiving : weight=2
fourth of july : weight=3

# ---- British -----------------------------------------------------------------

@ REGIONAL region=uk noun
mum : weight=3
mummy
nan : weight=2
quid : weight=3
pence : weight=3
fiver : weight=3
tenner : weight=3
hob : weight=3
cooker
baking tray
roasting tin : weight=2
loaf tin : weight=2
cake tin : weight=2
frying pan
kitchen roll : weight=2
tea towel : weight=3
worktop : weight=3
cupboard
tap
bin
rasher : weight=3
prawn : weight=2
courgette : weight=3
aubergine : weight=3
spring onion : weight=2
swede : weight=3
parsnip
spud : weight=3
beetroot : weight=2
gherkin
sultana : weight=3
digestive biscuit : weight=3
crumpet : weight=3
fish finger : weight=3
fairy cake : weight=3
flapjack
punnet : weight=3
pub : weight=2
allotment : weight=3
shop

@ REGIONAL region=uk mass
greaseproof paper = greaseproof : weight=3
cling film = clingfilm : weight=3
tin foil
coriander
rocket
mince
minced beef = beef mince : weight=3
plain flour : weight=3
self-raising flour = self raising flour : weight=3
strong white flour = strong bread flour, strong flour : weight=3
cornflour : weight=3
caster sugar : weight=3
icing sugar : weight=3
demerara sugar = demerara : weight=3
golden syrup : weight=3
black treacle = treacle : weight=3
bicarb = bicarbonate of soda : weight=3
double cream : weight=3
single cream : weight=3
clotted cream : weight=3
gammon : weight=3
streaky bacon = back bacon : weight=2
semi-skimmed milk = semi-skimmed : weight=3
tomato puree = tomato purée : weight=2
english mustard
brown sauce
porridge
washing up = washing-up : weight=3
favourite : weight=2
flavour : weight=2
colour : weight=2
neighbour : weight=2
grey
lovely
bloody
crikey : weight=2
blimey : weight=3
knackered : weight=3
proper
ta : weight=2

# ---- Australian --------------------------------------------------------------

@ REGIONAL region=au noun
barbie : weight=2
chook : weight=6
snag : weight=3
arvo : weight=6
bickie : weight=2
capsicum : weight=2
rockmelon : weight=4
lamington : weight=3
benchtop : weight=3
bench
servo : weight=3
ute : weight=5
chat potato : weight=4
paddock : weight=2
shearer : weight=4

@ REGIONAL region=au mass
fair dinkum : weight=6
g'day = gday : weight=6
no worries : weight=2
crook : weight=2
reckon
heaps
aussie : weight=4
australia : weight=4
fan forced = fan-forced : weight=3
silverbeet : weight=4
tomato sauce
pavlova
damper
outback : weight=3
woop woop : weight=4

# ---- Canadian ----------------------------------------------------------------

@ REGIONAL region=ca noun
loonie : weight=6
toonie : weight=6
toque : weight=6
canuck : weight=6
butter tart : weight=3
nanaimo bar : weight=6
cottage : weight=1
cabin : weight=1
kilometre : weight=3

@ REGIONAL region=ca mass
eh : weight=2
canada : weight=5
canadian : weight=5
saskatchewan : weight=6
alberta : weight=6
manitoba : weight=6
ontario : weight=6
quebec : weight=4
poutine : weight=4
homo milk : weight=6
peameal bacon : weight=6
saskatoon : weight=6
maple syrup
icing sugar
calving

# ---- Indian ------------------------------------------------------------------

@ REGIONAL region=in noun
katori : weight=6
kadai = kadhai, karahi : weight=3
tawa = tava : weight=2
masala dabba = dabba : weight=4
belan : weight=3
chakla : weight=3
whistle : weight=3
rupee : weight=6
lakh : weight=4
brinjal : weight=6
lady's finger = ladies finger : weight=5
drumstick
capsicum
roti
chapati
paratha
idli
dosa
aunty = auntie : weight=1
beta : weight=2

@ REGIONAL region=in mass
atta : weight=4
maida : weight=6
besan : weight=3
sooji = suji : weight=4
rava : weight=4
poha : weight=4
jeera : weight=3
haldi : weight=4
dhania : weight=4
hing : weight=3
methi : weight=2
kasuri methi : weight=3
rai : weight=3
ajwain : weight=2
amchur : weight=2
curd : weight=2
paneer
ghee
dal = daal, dhal
toor dal = tur dal, arhar dal : weight=3
moong dal : weight=2
chana dal : weight=2
urad dal : weight=2
tadka : weight=2
tempering : weight=2
basmati
garam masala
curry leaves = curry leaf
coriander powder : weight=2
chilli powder = chili powder
kashmiri chilli powder : weight=2
ginger garlic paste = ginger-garlic paste : weight=3
pressure cooker
on sim : weight=4
india : weight=5
indian : weight=2
diwali : weight=4
namaste : weight=6
