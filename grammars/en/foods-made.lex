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
beef stew mix
beef stew seasoning mix
biscuit baking mix
biscuit mix : key=baking-mix
black cherry gelatin : kind=gelatin
blackberry gelatin : kind=gelatin
blueberry muffin mix
boxed au gratin potatoes
boxed brownie mix
boxed cake mix
boxed scalloped potatoes
bran muffin mix
bread machine mix
bread mix
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
casserole mix
casserole recipe mix
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
cottage pie mix
couscous mix
cranberry gelatin : kind=gelatin
curing mix
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
jerky cure
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
meat cure
meatloaf seasoning mix
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
pot roast mix
pot roast seasoning mix
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
sausage seasoning
scalloped potato mix
scone mix
seasoned couscous mix
shepherd's pie mix
skillet meal mix
slow-cooker seasoning mix
spice cake mix
sponge cake mix
stew mix
stew seasoning
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
canned tamale : dish
carcass : ambiguous group=stock
chuck : ambiguous mass group=beef
coconut shrimp : plural=shrimp
country-style hash brown : kind=potato
crinkle-cut fry : kind=chip dish
cubed hash brown : kind=potato
curly fry : kind=chip dish
diced hash brown : kind=potato
drumette : group=poultry kind=chicken
entrecôte : group=beef kind=steak
falafel ball : dish
filet : ambiguous group=beef
french fry : kind=chip dish proper=1
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
hash brown : kind=potato key=hash-brown
hash brown patty : kind=potato key=hash-brown
hash brown potato : kind=potato
hock : ambiguous group=pork
home fry : kind=chip dish
loin : ambiguous group=pork kind=pork
loose-pack hash brown : kind=potato
mini yorkshire pudding : dish
omelet : dish ambiguous
oven chip : kind=chip dish
plant-based meatball
popcorn chicken
popcorn shrimp : plural=shrimp
potato cake : dish
potato gem : kind=potato
potato puff : kind=potato
potato tot : kind=potato
potato wedge : kind=chip dish
precooked chicken strip
pullet : group=poultry kind=chicken
rasher : ambiguous group=cured-meat kind=bacon
refrigerated hash brown : kind=potato
seasoned fry : kind=chip dish
seasoned potato wedge : kind=chip dish
shank : ambiguous group=lamb
shoestring fry : kind=chip dish
shoulder : ambiguous group=pork kind=pork
shredded hash brown : kind=potato
shredded hash brown potato : kind=potato
skinny fry : kind=chip dish
southern-style hash brown : kind=potato
steak fry : kind=chip dish
sweet potato fry : kind=chip dish
tater tot : kind=potato
tenderloin : ambiguous group=pork
thick-cut chip : kind=chip dish
thigh : ambiguous group=poultry kind=chicken
triple-cooked chip : kind=chip dish
vegan meatball
vegan nugget
vegetable nugget
vegetarian meatball
veggie ball
veggie nugget
veggie patty : dish
waffle fry : kind=chip dish
wing : ambiguous group=poultry kind=chicken
yorkshire pudding : dish proper=1 ambiguous

# Cooked dishes that go into another dish
@ FOOD noun mass group=prepared
aspic
barbecue beef : dish
barbecue pork : dish
base gravy
bean purée : dish
beef chili : kind=chili dish
bowl of chili : kind=chili dish
bread stuffing
brisket burnt ends : dish
burnt ends : dish
burrito filling
butternut squash purée : kind=mash
canned beef stew : dish
canned chili : kind=chili dish
canned chili with beans : kind=chili dish
canned chili without beans : kind=chili dish
canned sweet potato : kind=mash
canned sweet potatoes : kind=mash
canned yam : kind=mash
canned yams : kind=mash
carrot purée : kind=mash
cauliflower mash : kind=mash
celeriac mash : kind=mash
chestnut stuffing
chicken mayonnaise : dish
chicken stuffing
chili con carne : kind=chili dish key=chili-con-carne
chili with beans : kind=chili dish
chili without beans : kind=chili dish
chilli con carne : kind=chili dish key=chili-con-carne
chilli sin carne : kind=chili dish
chopped barbecue : dish
coleslaw : dish ambiguous key=coleslaw
coney sauce
coral : ambiguous group=shellfish
cornbread dressing
cornbread stuffing
creamed spinach
creamy coleslaw : dish key=coleslaw
crisp topping : dish
crumble mix : group=pastry kind=topping
crumble topping : group=pastry kind=topping key=crumble-topping
curry base
egg mayo
egg mayonnaise : dish
egg mayonnaise filling
forcemeat
fried beans : dish
frozen creamed spinach
fruit mincemeat
hot dog chili
hot dog chili sauce
hot dog sauce
jarred mincemeat
korma base
leftover chilli : kind=chili dish
leftover mash
leftover meat
leftover roast meat
leftover roast potatoes
leftover roast vegetables
leftover stuffing
leftover veg
leftover vegetables
luxury mincemeat
mashed beans : dish
mashed cauliflower : kind=mash
mashed swede : kind=mash
mashed sweet potato = mashed sweet potatoes : kind=mash
meat jelly
meat loaf : dish
mincemeat : ambiguous
mushy pea purée : kind=mash
oat crumble : group=pastry kind=topping
oat topping : group=pastry kind=topping
onion masala
palak purée
parsnip purée : kind=mash
pea purée : kind=mash
peelings : group=vegetable
pizza topping
pork stuffing
potato salad : dish ambiguous
prepared stuffing
pulled beef : dish
pulled chicken : dish
pulled jackfruit : dish
pulled lamb : dish
pulled turkey : dish
ready meal
refried black beans : dish
rice stuffing
rub : ambiguous group=spice
sandwich filler
sandwich filling
sausage stuffing
savoury jelly
scallop coral : group=shellfish
seasoned ground beef
seasoned taco meat
seaweed salad mix : dish
shredded barbecue pork : dish
slaw : dish ambiguous
spinach purée
streusel : dish
streusel mix : group=pastry kind=topping
streusel topping : group=pastry kind=topping key=crumble-topping
stuffing ball
suet-free mincemeat
sweet mincemeat
sweet potato mash : kind=mash
sweet potato purée : kind=mash
taco beef
taco filling
taco meat
tinned chilli con carne : kind=chili dish
tinned ratatouille : dish
turkey chili : kind=chili dish
vegetable peelings : group=vegetable
vegetarian chili : kind=chili dish
vegetarian mincemeat
whites : ambiguous group=egg key=egg-white

@ FOOD noun group=prepared dish
bannock : group=bread
cruller : group=pastry
genoise sponge : group=pastry
hush puppy : group=bread

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
