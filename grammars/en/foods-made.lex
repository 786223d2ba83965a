# Foods bought or kept half-made: mixes, frozen and ready foods, cooked dishes
# used as an ingredient, baby food. dish: also the name of a dish.

# Baking and dessert mixes
@ FOOD noun mass group=prepared kind=mix
all-purpose baking mix : key=baking-mix
angel food cake mix
au gratin potato mix
baking and pancake mix
baking flour mix
baking mix : key=baking-mix
banana cake mix
banana cream pudding mix
banana muffin mix
banana pudding : kind=pudding
banana pudding mix
beef stew mix : strong
beef stew seasoning mix : strong
biscuit baking mix
biscuit mix : key=baking-mix
black cherry gelatin : kind=gelatin
blackberry gelatin : kind=gelatin
blueberry muffin mix
box cake mix : key=cake-mix
boxed au gratin potatoes
boxed brownie mix
boxed cake mix
boxed scalloped potatoes
bran muffin mix
bread machine mix
bread mix
bread pudding : kind=pudding
brownie mix : key=brownie-mix
butter cake mix
butter pecan cake mix
butter-recipe cake mix
buttermilk baking mix
buttermilk pancake mix
butterscotch pudding : kind=pudding
butterscotch pudding mix
cake mix : key=cake-mix
caramel pudding mix
carrot cake mix
casserole mix : strong
casserole recipe mix : strong
cheeseburger mac mix
cheesecake filling
cheesecake mix
cheesecake pudding mix
cheesecake-flavored pudding mix
cherry chip cake mix
cherry gelatin : kind=gelatin
cherry gelatin mix : kind=gelatin
cherry-flavored gelatin : kind=gelatin
chocolate brownie mix
chocolate cake mix
chocolate chip cookie mix
chocolate fudge cake mix
chocolate fudge pudding mix
chocolate instant pudding
chocolate instant pudding mix
chocolate mousse mix
chocolate pudding : kind=pudding
chocolate pudding cup : kind=pudding
chocolate pudding mix : key=chocolate-pudding-mix
coconut cream pudding mix
coconut pudding mix
coffee cake mix
confetti cake mix
cook-and-serve chocolate pudding mix
cook-and-serve pudding mix
cook-and-serve vanilla pudding mix
cookie mix : key=cookie-mix
corn muffin mix : key=muffin-mix
cornbread mix = corn bread mix
cornbread muffin mix
cottage pie mix : strong
couscous mix
cranberry gelatin : kind=gelatin
curing mix : strong
dark chocolate cake mix
devil's food cake mix : key=devils-food-cake-mix
devil's food chocolate cake mix : key=devils-food-cake-mix
devil's food pudding mix
dry biscuit mix
dry brownie mix
dry cake mix
dry cornbread mix
dry falafel mix
dry pancake mix
dry pudding mix
dumpling mix
falafel mix
family-size brownie mix
flatbread mix
flavored gelatin : kind=gelatin
flavored gelatin mix : kind=gelatin
flavored gelatin powder : kind=gelatin
flavoured gelatin : kind=gelatin key=gelatin-dessert
fluffy frosting mix : kind=mix
focaccia mix
french vanilla cake mix : proper=1
french vanilla pudding mix : proper=1
frosting mix : kind=mix
fudge brownie mix : key=brownie-mix
gelatin dessert : kind=gelatin key=gelatin-dessert
gelatin dessert mix : kind=gelatin
german chocolate cake mix : proper=1
gingerbread cake mix
gingerbread cookie mix
gingerbread mix
gluten-free cake mix
grape gelatin : kind=gelatin
hamburger dinner mix
hamburger skillet dinner mix
hot roll mix
icing mix : kind=mix
instant banana cream pudding mix
instant banana pudding mix
instant butterscotch pudding mix
instant cheesecake mix
instant cheesecake pudding mix
instant chocolate fudge pudding mix
instant chocolate pudding : key=chocolate-pudding-mix
instant chocolate pudding mix : key=chocolate-pudding-mix
instant coconut pudding mix
instant dessert mix
instant french vanilla pudding mix
instant lemon pudding mix
instant pistachio pudding mix
instant pudding : key=pudding-mix
instant pudding and pie filling mix
instant pudding mix : key=pudding-mix
instant pudding powder
instant vanilla pudding : key=vanilla-pudding-mix
instant vanilla pudding and pie filling
instant vanilla pudding mix : key=vanilla-pudding-mix
instant white chocolate pudding mix
jelly block : kind=gelatin
jelly crystals : kind=gelatin key=gelatin-dessert
jelly cube : kind=gelatin
jelly cubes : kind=gelatin
jelly powder : kind=gelatin
jerky cure : strong
lemon cake mix
lemon gelatin : kind=gelatin
lemon gelatin mix : kind=gelatin
lemon instant pudding
lemon pudding : kind=pudding
lemon pudding mix
lemon supreme cake mix
lemon-flavored gelatin : kind=gelatin
lime gelatin : kind=gelatin
lime gelatin mix : kind=gelatin
lime jelly crystals : kind=gelatin
lime-flavored gelatin : kind=gelatin
marble cake mix
matzo ball soup mix
meat cure : strong
meatloaf seasoning mix : strong
mousse mix
muffin mix : key=muffin-mix
no-bake cheesecake filling
no-bake cheesecake mix
noodle mix
noodles and sauce mix
oatmeal cookie mix
orange cake mix
orange gelatin : kind=gelatin
orange gelatin mix : kind=gelatin
orange-flavored gelatin : kind=gelatin
packet cake mix
pancake and waffle mix : key=pancake-mix
pancake mix : key=pancake-mix
parmesan couscous mix : proper=1
pasta and sauce mix
pasta salad mix
peach gelatin : kind=gelatin
peanut butter cookie mix
pineapple gelatin : kind=gelatin
pistachio pudding
pistachio pudding mix
pizza dough mix
port wine jelly : kind=gelatin
pot roast mix : strong
pot roast seasoning mix : strong
pound cake mix
prepared pudding : kind=pudding
pudding and pie filling mix
pudding cup : kind=pudding
pudding mix : key=pudding-mix
raspberry gelatin : kind=gelatin
raspberry gelatin mix : kind=gelatin
raspberry jelly crystals : kind=gelatin
raspberry-flavored gelatin : kind=gelatin
ready-made pudding : kind=pudding
ready-to-eat cheesecake filling
red velvet cake mix
reduced-fat baking mix
rice pudding : kind=pudding
sausage seasoning : strong
scalloped potato mix
scone mix
seasoned couscous mix
shepherd's pie mix : strong
skillet meal mix
slow-cooker seasoning mix : strong
spice cake mix
sponge cake mix
stew mix : strong
stew seasoning : strong
strawberry cake mix
strawberry gelatin : kind=gelatin
strawberry gelatin mix : kind=gelatin
strawberry jelly crystals : kind=gelatin
strawberry-flavored gelatin : kind=gelatin
sugar cookie mix : key=cookie-mix
sugar-free gelatin : kind=gelatin
sugar-free instant pudding mix
sugar-free lemon gelatin : kind=gelatin
sugar-free lime gelatin : kind=gelatin
sugar-free orange gelatin : kind=gelatin
sugar-free pudding mix
sugar-free raspberry gelatin : kind=gelatin
sugar-free strawberry gelatin : kind=gelatin
sugar-free vanilla pudding mix
swiss chocolate cake mix : proper=1
tapioca pudding : kind=pudding
vanilla cake mix
vanilla instant pudding
vanilla instant pudding mix
vanilla pudding : kind=pudding
vanilla pudding mix : key=vanilla-pudding-mix
vanilla pudding powder
waffle mix
watermelon gelatin : kind=gelatin
white cake mix
white chocolate pudding mix
yeast bread mix
yellow cake mix

# Potatoes and vegetables, frozen or ready
@ FOOD noun group=prepared
apple turnover : dish
battered fish : plural=fish
battered fish fillet
bean patty : dish
belly : ambiguous group=pork kind=pork
breaded chicken cutlet
breaded chicken patty
breaded chicken strip
breaded chicken tender
breaded fish : plural=fish
breaded fish fillet
breaded prawn
breaded shrimp : plural=shrimp
breast : ambiguous group=poultry kind=chicken
burger : ambiguous dish
burrito : dish
canned tamale : dish
carcass : ambiguous group=stock
cheese pizza : dish
cheeseburger : dish
chicken kebab : dish
chimichanga : dish
chip : ambiguous kind=chip
chuck : ambiguous mass group=beef
coconut shrimp : plural=shrimp
cornish pasty : dish proper=1
country-style hash brown : kind=potato
crinkle-cut fry : kind=chip dish
croquette : dish
cubed hash brown : kind=potato
curly fry : kind=chip dish
deviled egg : dish
devilled egg : dish
diced hash brown : kind=potato
doner kebab : dish
drumette : group=poultry kind=chicken
dumpling : dish
egg bite : dish
egg roll : dish
empanada : dish
enchilada : dish
entrecôte : group=beef kind=steak
fajita : dish
falafel : dish
falafel ball : dish
filet : ambiguous group=beef
flauta : dish
french fry : kind=chip dish proper=1 key=french-fry
fries : kind=chip dish key=french-fry
frittata : dish
frozen breaded chicken patty
frozen breaded chicken strip
frozen breaded fish : plural=fish
frozen breaded shrimp : plural=shrimp
frozen burrito : dish
frozen chicken nugget
frozen chicken strip
frozen chicken tender
frozen chip : kind=chip dish
frozen diced hash brown : kind=potato
frozen dumpling : dish
frozen egg roll : dish
frozen falafel : dish
frozen french fry : kind=chip dish
frozen gyoza : dish
frozen hash brown : kind=potato
frozen hash brown potato : kind=potato
frozen meat pie : dish
frozen pizza : dish
frozen popcorn chicken
frozen pot pie : dish
frozen potato nugget : kind=potato
frozen potato tot : kind=potato
frozen potato wedge : kind=chip dish
frozen potsticker : dish
frozen shredded hash brown : kind=potato
frozen shredded hash brown potato : kind=potato
frozen southern-style hash brown : kind=potato
frozen sweet potato fry : kind=chip dish
frozen tamale : dish
frozen taquito : dish
frozen tater tot : kind=potato
grilled chicken strip
gyoza : dish
gyro : dish
hand pie : dish
hash brown : kind=potato key=hash-brown
hash brown patty : kind=potato key=hash-brown
hash brown potato : kind=potato
hock : ambiguous group=pork
home fry : kind=chip dish
jamaican patty : dish proper=1
kabob : dish
kebab : dish
lamb kebab : dish
latke : dish
loin : ambiguous group=pork kind=pork
loose-pack hash brown : kind=potato
mandu : dish
meat pie : dish
mini pizza : dish
mini yorkshire pudding : dish
momo : dish
omelette = omelet : dish
onion bhaji : dish
oven chip : kind=chip dish
pakora : dish
pasty : dish
pepperoni pizza : dish
pizza : dish
plant-based meatball
popcorn chicken
popcorn shrimp : plural=shrimp
pork dumpling : dish
pork pie : dish
pot pie = potpie : dish
pot sticker : dish
potato cake : dish
potato croquette : dish
potato gem : kind=potato
potato pancake : dish
potato puff : kind=potato
potato rösti : dish
potato tot : kind=potato
potato wedge : kind=chip dish
potsticker : dish
prawn dumpling : dish
precooked chicken strip
pullet : group=poultry kind=chicken
quesadilla : dish
quiche : dish
quiche lorraine : dish
rasher : ambiguous group=cured-meat kind=bacon
refrigerated hash brown : kind=potato
rösti : dish
samosa : dish
sandwich : ambiguous dish
sausage roll : dish
scotch egg : dish proper=1
seasoned fry : kind=chip dish
seasoned potato wedge : kind=chip dish
seekh kebab : dish
shank : ambiguous group=lamb
shawarma : dish
shish kebab : dish
shoestring fry : kind=chip dish
shoulder : ambiguous group=pork kind=pork
shredded hash brown : kind=potato
shredded hash brown potato : kind=potato
shumai : dish
siu mai : dish
skinny fry : kind=chip dish
soup dumpling : dish
southern-style hash brown : kind=potato
souvlaki : dish
spanish omelette : dish proper=1
spring roll : dish key=vegetable-spring-roll
steak fry : kind=chip dish
steak pie : dish
steamed dumpling : dish
suet dumpling : dish
sweet potato fry : kind=chip dish
taco : dish
tamale : dish
taquito : dish
tater tot : kind=potato
tenderloin : ambiguous group=pork
thick-cut chip : kind=chip dish
thigh : ambiguous group=poultry kind=chicken
toad in the hole : dish
triple-cooked chip : kind=chip dish
turnover : dish
vegan meatball
vegan nugget
vegetable nugget
vegetable pakora : dish
vegetable samosa : dish
vegetable spring roll : dish key=vegetable-spring-roll
vegetarian meatball
veggie ball
veggie nugget
veggie patty : dish
waffle fry : kind=chip dish
wing : ambiguous group=poultry kind=chicken
wonton : dish
yorkshire pudding : dish proper=1

# Cooked dishes that go into another dish
@ FOOD noun mass group=prepared
apple crumble : dish
apple pie : dish
apple strudel : dish
apple tart : dish
aspic
babka : dish
baked alaska : dish
baklava : dish
banoffee pie : dish
barbacoa : dish
barbecue beef : dish
barbecue chicken : dish
barbecue pork : dish
base gravy
bean purée : dish
bean salad : dish
beef chili : kind=chili dish
beef stew : dish
biryani : dish
blancmange : dish
bowl of chili : kind=chili dish
bread stuffing
brisket burnt ends : dish
bubble and squeak : kind=mash
burnt ends : dish
burrito filling
butter chicken : dish
butternut squash purée : kind=mash
caesar salad : dish
california roll : dish
canned beef stew : dish
canned chili : kind=chili dish
canned chili with beans : kind=chili dish
canned chili without beans : kind=chili dish
canned sweet potato : kind=mash
canned sweet potatoes : kind=mash
canned yam : kind=mash
canned yams : kind=mash
carrot purée : kind=mash
cauliflower cheese : dish
cauliflower mash : kind=mash
celeriac mash : kind=mash
ceviche : dish
champ : kind=mash
cheese fondue : dish
cherry pie : dish
chestnut stuffing
chicken curry : dish
chicken mayonnaise : dish
chicken salad : dish
chicken stew : dish
chicken stuffing
chicken tikka : dish
chicken tikka masala : dish
chili con carne : kind=chili dish key=chili-con-carne
chili with beans : kind=chili dish
chili without beans : kind=chili dish
chilli con carne : kind=chili dish key=chili-con-carne
chilli sin carne : kind=chili dish
chocolate mousse : dish
chop suey : dish
chopped barbecue : dish
chow fun : dish
chow mein : dish
colcannon : kind=mash
coleslaw : dish key=coleslaw
coney sauce
coral : ambiguous group=shellfish
cornbread dressing
cornbread stuffing
cottage pie : dish
crab salad : dish
creamed spinach
creamy coleslaw : dish key=coleslaw
crisp topping : dish
crumble mix : group=pastry kind=topping
crumble topping : group=pastry kind=topping key=crumble-topping
crème brûlée : dish
crème caramel : dish
curry : ambiguous dish
curry base
dal makhani : dish
egg mayo
egg mayonnaise : dish
egg mayonnaise filling
egg salad : dish
fattoush : dish
fish pie : dish
flan : dish
fondue : dish
fool : dish
forcemeat
fried beans : dish
frozen creamed spinach
frozen lasagna = frozen lasagne : dish
fruit mincemeat
general's chicken : dish
greek salad : dish proper=1
green salad : dish
ham salad : dish
hot dog chili
hot dog chili sauce
hot dog sauce
jambalaya : dish
jarred mincemeat
jerk chicken : dish
jollof rice : dish
junket : dish
katsu chicken : dish
kedgeree : dish
key lime pie : dish
korma base
lamb curry : dish
lamb stew : dish
leftover chilli : kind=chili dish
leftover mash
leftover meat
leftover risotto : dish
leftover roast meat
leftover roast potatoes
leftover roast vegetables
leftover stew : dish
leftover stuffing
leftover veg
leftover vegetables
lemon meringue pie : dish
luxury mincemeat
macaroni bake : dish
macaroni salad : dish
mashed beans : dish
mashed cauliflower : kind=mash
mashed swede : kind=mash
mashed sweet potato = mashed sweet potatoes : kind=mash
meat jelly
meatloaf = meat loaf : dish
mince pie : dish
mincemeat : ambiguous
moussaka : dish
mousse : dish
mushy pea purée : kind=mash
nut roast : dish
oat crumble : group=pastry kind=topping
oat topping : group=pastry kind=topping
onion masala
orange chicken : dish
pad thai : dish
paella : dish
palak purée
panna cotta : dish
parsnip purée : kind=mash
pasta salad : dish
pea purée : kind=mash
pecan pie : dish
peel : ambiguous group=citrus
peelings : group=vegetable
pilaf : dish
pilau : dish
pizza topping
pork stuffing
posset : dish
potato salad : dish
prepared stuffing
pulled beef : dish
pulled chicken : dish
pulled jackfruit : dish
pulled lamb : dish
pulled turkey : dish
pumpkin pie : dish
quinoa salad : dish
ragout : dish
ratatouille : dish
ready meal
red slaw : dish
refried black beans : dish
rice and peas : dish
rice stuffing
rind : ambiguous group=citrus
risotto : dish
rub : ambiguous group=spice strong
russian salad : dish proper=1
sabayon : dish
salad : ambiguous dish
salmon mousse : dish
sandwich filler
sandwich filling
sashimi : dish
satay chicken : dish
sausage stuffing
savoury jelly
scallop coral : group=shellfish
seafood salad : dish
seasoned ground beef
seasoned taco meat
seaweed salad mix : dish
shepherd's pie : dish
shredded barbecue pork : dish
side salad : dish
slaw : dish
spinach purée
stewed beef : dish
streusel : dish
streusel mix : group=pastry kind=topping
streusel topping : group=pastry kind=topping key=crumble-topping
strudel : dish
stuffing ball
succotash : dish
suet-free mincemeat
sushi : dish
sweet mincemeat
sweet potato mash : kind=mash
sweet potato purée : kind=mash
syllabub : dish
syrup from the can : group=syrup liquid
tabbouleh : dish
taco beef
taco filling
taco meat
tandoori chicken : dish
tarka dal : dish
teriyaki chicken : dish
three-bean salad : dish
tinned chilli con carne : kind=chili dish
tinned ratatouille : dish
tiramisu : dish
tossed salad : dish
trifle : dish
tuna salad : dish
turkey chili : kind=chili dish
turkey loaf : dish
tv dinner
vegetable curry : dish
vegetable peelings : group=vegetable
vegetable ratatouille : dish
vegetarian chili : kind=chili dish
vegetarian mincemeat
whites : ambiguous group=egg key=egg-white
zabaglione : dish
zest : ambiguous group=citrus

@ FOOD noun group=prepared dish
apple fritter
arancini : mass
avocado toast
banana split : group=confection
bannock : group=bread
beans on toast
blintz
bolognese ragu : mass
bouillabaisse : mass group=soup
cheese on toast
cheese toastie
cock-a-leekie : mass group=soup
coffeecake : group=pastry
congee : mass
corn fritter
courgette fritter
cruller : group=pastry
dolma : mass
dolmades : mass
fritter
galantine : mass
gazpacho : mass group=soup
genoise : group=pastry
genoise sponge : group=pastry
grilled cheese
hushpuppy = hush puppy : group=bread
jook : mass
knish
leftover bolognese : mass
leftover ragu : mass
mulligatawny : mass group=soup
onigiri : mass
oxtail soup : mass group=soup
parfait
popover : group=bread
pudding : ambiguous dish
ramen soup : mass group=soup
rarebit
rice ball : mass
rice porridge : mass
risotto ball : mass
rissole
rugelach : mass group=pastry
scotch broth : mass group=soup proper=1
stuffed grape leaves : mass
stuffed vine leaves : mass
sundae : group=confection
tartlet : group=pastry
terrine : mass
toastie
torte : ambiguous group=pastry
vegetable fritter
vichyssoise : mass group=soup
welsh rarebit : proper=1

# For babies
@ FOOD noun mass group=baby-food
apple baby food
apricot baby food
baby cereal
baby food : key=baby-food
baby food carrots
baby food jar
baby food prunes
baby oatmeal
baby porridge
baby purée : key=baby-food
baby rice
baby rice cereal
baby rusk
baby yogurt
banana baby food
carrot baby food
follow-on milk
infant cereal
infant rice cereal
plum baby food
prune baby food
puréed baby food
puréed carrots
puréed prunes
strained apricots
strained baby food
strained carrots
strained plums
strained prunes
sweet potato baby food
toddler milk
