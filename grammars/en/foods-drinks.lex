# Drinks used in cooking: wine, spirits, beer, juice, tea, coffee, soda.

# Wine and fortified wine
@ FOOD noun mass group=wine liquid kind=wine
aji mirin
alcohol-free white wine
alcohol-free wine
amontillado : key=sherry kind=sherry
aperitif wine
asti : ambiguous
barbera : ambiguous
beaujolais
bianco vermouth : kind=vermouth
blackberry wine
blanc aperitif
bordeaux : ambiguous
brut champagne
burgundy : key=burgundy-wine ambiguous
burgundy wine : proper=1 key=burgundy-wine
cabernet
cabernet sauvignon
cava : ambiguous
chablis
champagne : key=sparkling-wine
chardonnay
chenin blanc
cheongju
chianti
chinese cooking wine : key=shaoxing-wine proper=1
chinese rice wine : key=shaoxing-wine proper=1
chinese wine : proper=1
claret : ambiguous
concord grape wine
cooking sake
cooking sherry
cooking white wine
cooking wine
cream sherry : kind=sherry key=cream-sherry
crisp white wine
crémant
dealcoholised wine
decent white wine
dessert wine
dry madeira
dry marsala
dry marsala wine
dry red wine : key=red-wine
dry sherry : key=sherry kind=sherry
dry sparkling wine
dry vermouth
dry white
dry white wine : key=white-wine
elderberry wine
extra-dry vermouth
fino : key=sherry kind=sherry ambiguous
fino sherry : key=sherry kind=sherry
fruity red wine
full-bodied red wine
gewürztraminer
ginger wine
hon mirin
huangjiu
japanese rice wine : proper=1
kosher wine
late-harvest wine
leftover red wine
leftover white wine
madeira : ambiguous proper=1
madeira wine
makgeolli
malbec
manzanilla sherry : key=sherry kind=sherry
marsala : proper=1
marsala wine
mead
medium sherry : key=sherry kind=sherry
medium-dry white wine
merlot
michiu
mirin
moscatel
moscato
mulled wine
muscadet
muscat wine
non-alcoholic red wine
non-alcoholic wine
oloroso
oloroso sherry
pale dry sherry : key=sherry kind=sherry
passito
passover wine
pedro ximénez : kind=sherry key=cream-sherry
pedro ximénez sherry : kind=sherry
pink wine
pinot grigio
pinot gris
pinot noir
plum wine
port : ambiguous
port wine
prosecco : key=sparkling-wine
px sherry : kind=sherry key=cream-sherry
quinquina
red cooking wine
red vermouth : kind=vermouth
red wine : key=red-wine
rice cooking wine
rice wine
riesling
rioja
robust red wine
rosso vermouth : kind=vermouth
rosé : key=rosé-wine ambiguous
rosé wine : key=rosé-wine
ruby port
sake : ambiguous
sangria
sauternes
sauvignon blanc
shao hsing
shaoxing : key=shaoxing-wine
shaoxing cooking wine
shaoxing rice wine
shaoxing wine = shaohsing wine, shao xing wine : proper=1 key=shaoxing-wine
sherry
shiraz
soave : ambiguous
sparkling rosé
sparkling white wine
sparkling wine : key=sparkling-wine
sweet marsala
sweet rice wine
sweet sherry
sweet vermouth : kind=vermouth
sweet white wine
sweet wine
syrah
tawny port
tempranillo
umeshu
vermouth
vinho verde
white cooking wine
white port
white vermouth
white wine : key=white-wine
wine = wines
wine-based aperitif
zinfandel

# Spirits and liqueurs
@ FOOD noun mass group=spirit liquid
absinthe
advocaat
agave tequila
aged rum : kind=rum
aguardiente
alcohol
allspice dram
almond liqueur : kind=liqueur key=almond-liqueur
amaretto : kind=liqueur key=almond-liqueur
amaretto liqueur : kind=liqueur
amaro : ambiguous
amber rum : kind=rum
anis : ambiguous
anise liqueur
anisette
apple brandy : key=calvados
apple liqueur : kind=liqueur
apple schnapps : kind=liqueur
applejack : key=calvados
apricot brandy : kind=brandy
apricot liqueur : kind=liqueur
aquavit
arak
armagnac : key=cognac
arrack
añejo tequila
baijiu
banana liqueur : kind=liqueur
banana rum : kind=rum
banana schnapps : kind=liqueur
bar mix : group=beverage
bitter aperitif
bitter liqueur
bitter orange aperitif
black raspberry liqueur : kind=liqueur
black rum : kind=rum
black vodka : kind=vodka
blackberry brandy : kind=brandy
blackberry liqueur : kind=liqueur
blackcurrant liqueur : kind=liqueur
blanco tequila : key=tequila
blended whisky
bloody mary mix : group=beverage
blue agave tequila
blue curaçao : kind=liqueur
blueberry vodka : kind=vodka
booze
bourbon
bourbon whiskey
brandy = brandies
butterscotch liqueur : kind=liqueur
butterscotch schnapps : kind=liqueur
cachaça
calvados : key=calvados
calvados brandy
canadian whisky : kind=whiskey proper=1
caramel liqueur : kind=liqueur
caramel vodka : kind=vodka
cassis : kind=liqueur key=crème-de-cassis
cherry brandy : kind=brandy
cherry liqueur : kind=brandy
cherry vodka : kind=vodka
chocolate liqueur : kind=liqueur key=chocolate-liqueur
cinnamon schnapps : kind=liqueur
cinnamon whisky : kind=liqueur
citron vodka : kind=vodka
citrus vodka : kind=vodka
clear rum : kind=rum
cocktail mix : group=beverage
coconut liqueur : kind=rum
coconut rum : kind=rum
coconut-flavored rum : kind=rum
coffee liqueur : kind=liqueur
coffee-flavored liqueur : kind=liqueur
coffee-flavoured liqueur : kind=liqueur
cognac : key=cognac
cognac orange liqueur : kind=liqueur
cooking brandy
cordial liqueur
corn whiskey : kind=whiskey
cranberry vodka : kind=vodka
cream liqueur : kind=liqueur key=irish-cream-liqueur
crème de banane : kind=liqueur
crème de cacao : kind=liqueur key=chocolate-liqueur
crème de cassis : kind=liqueur key=crème-de-cassis
crème de framboise : kind=liqueur
crème de menthe : kind=liqueur
crème de mûre : kind=liqueur
crème de noyaux : kind=liqueur
crème de violette : kind=liqueur
cucumber vodka : kind=vodka
curaçao : kind=liqueur key=orange-liqueur
daiquiri mix : group=beverage
dark crème de cacao : kind=liqueur
dark rum : kind=rum
dry curaçao : kind=liqueur
dry gin
eau de vie
egg liqueur
elderflower liqueur : kind=liqueur
espresso vodka : kind=vodka
fernet
flavoured vodka = flavored vodka : kind=vodka
framboise
frozen margarita mix : group=beverage
fruit liqueur
gentian liqueur
gin
gin-based fruit cup
ginger liqueur : kind=liqueur
gold tequila
golden rum = gold rum : kind=rum
grain alcohol
grain vodka
grape vodka : kind=vodka
grappa
green crème de menthe : kind=liqueur
green herbal liqueur : kind=liqueur
hard liquor
hazelnut liqueur : kind=liqueur
herbal liqueur = herb liqueur : kind=liqueur
honey liqueur : kind=liqueur
irish cream : kind=liqueur key=irish-cream-liqueur proper=1
irish cream liqueur : kind=liqueur proper=1 key=irish-cream-liqueur
irish cream whiskey liqueur : kind=liqueur proper=1
irish whiskey : kind=whiskey proper=1
japanese whisky : kind=whiskey proper=1
jenever
kirsch : key=kirsch
kirschwasser : key=kirsch
lemon liqueur : kind=liqueur
lemon vodka : kind=vodka
light rum : kind=rum key=white-rum
limoncello : kind=liqueur
liqueur
liquor : ambiguous
london dry gin
lychee liqueur : kind=liqueur
macadamia liqueur : kind=liqueur
malt whisky : kind=whisky
mandarin liqueur : kind=liqueur
mandarin vodka : kind=vodka
mango rum : kind=rum
maraschino : kind=liqueur key=maraschino-liqueur
maraschino liqueur : kind=liqueur key=maraschino-liqueur
marc : ambiguous
margarita mix : group=beverage
melon liqueur : kind=liqueur
mescal : key=mezcal
mezcal : key=mezcal
mint liqueur : kind=liqueur
mojito mix : group=beverage
navy rum : kind=rum
nocino : kind=liqueur
orange aperitif
orange brandy liqueur : kind=liqueur
orange curaçao : kind=liqueur
orange liqueur : kind=liqueur key=orange-liqueur
orange vodka : kind=vodka
orange-flavored liqueur : kind=liqueur
orange-flavoured liqueur : kind=liqueur
ouzo
overproof rum : kind=rum
palinka
passion fruit liqueur : kind=liqueur
pastis
pastis liqueur
peach brandy : kind=brandy
peach liqueur : kind=liqueur
peach schnapps : kind=liqueur
peach vodka : kind=vodka
pear brandy
pear liqueur : kind=liqueur
pear vodka : kind=vodka
pepper vodka : kind=vodka
peppermint liqueur : kind=liqueur
peppermint schnapps : kind=liqueur
pimento dram
pineapple liqueur : kind=liqueur
pineapple rum : kind=rum
pink gin
pisco
pistachio liqueur : kind=liqueur
piña colada mix : group=beverage
plain vodka
plum brandy
poire williams
pomegranate liqueur : kind=liqueur
raki
raspberry liqueur = raspberry liquor : kind=liqueur
raspberry schnapps : kind=liqueur
raspberry vodka : kind=vodka
red bitter aperitif
reposado tequila
rhum agricole : kind=rum
rompope
root beer schnapps : kind=liqueur
rose liqueur : kind=liqueur
rum
rye whiskey : kind=whiskey
saffron liqueur : kind=liqueur
sambuca
schnapps
scotch whisky : kind=whisky proper=1
shochu
silver rum : kind=rum
silver tequila : key=tequila
single malt whisky : kind=whisky
slivovitz
sloe gin
soju
sour apple liqueur : kind=liqueur
sour apple schnapps : kind=liqueur
sour mix : group=beverage
spiced rum : kind=rum
strawberry daiquiri mix : group=beverage
strawberry liqueur : kind=liqueur
strawberry vodka : kind=vodka
sweet and sour mix : group=beverage
tea liqueur : kind=liqueur
tennessee whiskey : kind=whiskey
tequila : key=tequila
triple sec : kind=liqueur key=orange-liqueur
vanilla liqueur : kind=liqueur
vanilla rum : kind=rum
vanilla vodka : kind=vodka
violet liqueur : kind=liqueur
vodka
walnut liqueur : kind=liqueur
watermelon schnapps : kind=liqueur
whipped cream vodka : kind=vodka
whiskey : key=whisky
whiskey sour mix : group=beverage
whisky : key=whisky
whisky liqueur : kind=liqueur
white chocolate liqueur : kind=liqueur
white crème de cacao : kind=liqueur
white crème de menthe : kind=liqueur
white rum : kind=rum key=white-rum
white tequila
yellow herbal liqueur : kind=liqueur

# Beer and cider
@ FOOD noun mass group=beer liquid
alcohol-free beer : kind=beer
alcoholic cider
ale : key=pale-ale ambiguous
amber ale
amber beer
beer = beers
belgian ale : proper=1
belgian beer : proper=1
bitter ale
black beer
bock : ambiguous
brown ale
brown beer
chocolate stout
cider
cloudy cider
cold lager
dark ale
dark beer
dark lager
dark stout
dry cider
dry hard cider
dry stout
flat beer
golden ale
hard cider
hard seltzer
india pale ale
ipa
irish stout : proper=1
lager : key=lager
light ale
light beer : key=lager
light lager
medium cider
medium-dry cider
mexican beer : proper=1
mexican lager : proper=1
milk stout
non-alcoholic beer : kind=beer
oatmeal stout
pale ale : key=pale-ale
pale lager
pear cider
perry : ambiguous
pilsener
pilsner
porter : ambiguous
porter beer
real ale
red ale
scrumpy
stout : ambiguous
sweet cider
sweet stout
wheat beer
white beer

# Juice
@ FOOD noun mass group=beverage liquid kind=juice
apple cider : kind=cider
apple juice
apple juice concentrate : kind=concentrate
apricot juice
apricot nectar
açaí juice
banana nectar
beet brine
beet juice
beetroot brine
beetroot juice
black cherry juice
blackcurrant cordial : kind=cordial
blackcurrant juice
blackcurrant squash : kind=cordial
blueberry juice
cabbage juice
carrot juice
celery juice
cherry juice
clear apple juice
cloudy apple juice
coconut juice
concord grape juice
cordial : ambiguous
cran-apple juice
cran-raspberry juice
cranberry cocktail
cranberry drink
cranberry juice : key=cranberry-juice
cranberry juice cocktail : key=cranberry-juice
cranberry juice concentrate : kind=concentrate
cranberry juice drink
cranberry nectar
cranberry raspberry juice
cucumber juice
elderberry juice
fennel juice
fresh apple cider : kind=cider
fresh apple juice
fresh pineapple juice
frozen apple juice concentrate : kind=concentrate
frozen concentrated orange juice
frozen cranberry juice concentrate : kind=concentrate
frozen grape juice concentrate : kind=concentrate
frozen lemonade : kind=concentrate
frozen lemonade concentrate : kind=concentrate key=lemonade-concentrate
frozen limeade : kind=concentrate
frozen limeade concentrate : kind=concentrate
frozen orange juice
frozen orange juice concentrate : key=orange-juice-concentrate
frozen pineapple juice concentrate : kind=concentrate
frozen pink lemonade concentrate : kind=concentrate
fruit cordial : kind=cordial
fruit drink
fruit juice
fruit juice blend
fruit nectar
fruit punch
ginger juice
ginger root juice
grape juice
grape juice concentrate : kind=concentrate
guava juice
guava nectar
juice from the pineapple
kimchi brine
kimchi juice
kiwi juice
lemonade concentrate : kind=concentrate key=lemonade-concentrate
lime concentrate : kind=concentrate
lime cordial : kind=cordial
lime juice cordial : kind=cordial
limeade concentrate : kind=concentrate
lychee juice
mango juice
mango nectar
melon juice
mixed fruit juice
mixed vegetable juice
multivitamin juice
nectarine juice
non-alcoholic cider : kind=cider
onion juice
orange concentrate : key=orange-juice-concentrate
orange juice concentrate : key=orange-juice-concentrate
orange squash : kind=cordial
orange-pineapple juice
pan juice
papaya nectar
passion fruit juice
peach juice
peach nectar
pear juice
pear nectar
pickled beet juice
pineapple juice
pineapple juice concentrate : kind=concentrate
pineapple orange juice
pineapple syrup
pink lemonade concentrate : kind=concentrate
pomegranate juice
pressed apple juice
prune juice
purple grape juice
raspberry juice
red grape juice
sauerkraut juice
sour cherry juice
sour grape juice
spicy vegetable juice
spinach juice
strawberry juice
sugarcane juice = sugar cane juice
sweet apple cider : kind=cider
sweetened lime cordial : kind=cordial
sweetened lime juice : kind=cordial
sweetened lime juice cordial : kind=cordial
syrup from the pineapple
syrup from the tin
tart cherry juice
thawed lemonade concentrate : kind=concentrate
thawed orange juice concentrate
tomato juice : key=tomato-juice
tomato vegetable juice
tomato water
tomato-clam juice
tropical fruit juice
tropical punch
unsweetened cranberry juice
unsweetened pineapple juice
vegetable cocktail
vegetable juice : key=tomato-juice
vegetable juice cocktail : key=tomato-juice
watermelon juice
wheatgrass juice
white cranberry juice
white grape juice
white grape juice concentrate : kind=concentrate

# Sodas, coffee, tea and other drinks
@ FOOD noun mass group=beverage liquid
aguas frescas
alcoholic ginger beer
assam tea
atole
black cherry soda
black coffee
black tea : key=tea
brewed black tea
brewed chai
brewed coffee : key=coffee
brewed espresso
brewed green tea
brewed strong coffee
brewed tea
carbonated beverage
carbonated drink
carbonated lemon-lime beverage : kind=soda
chai
chai concentrate
chai tea
chamomile tea
cherry cola : kind=cola
cherry soda
chilled coffee
citrus soda : kind=soda
cloudy lemonade
coffee : key=coffee
cola : kind=cola
cola soft drink : kind=cola
cold black tea
cold brew
cold coffee
cold tea
cold-brew coffee
cooled coffee
cream soda
darjeeling tea
decaf coffee
decaffeinated coffee
diet cola : kind=cola
diet ginger ale
diet ginger beer
diet lemon-lime soda : kind=soda
diet lemonade
diet orange soda
diet root beer
diet soda
diet tonic water
drinking chocolate made up
dry ginger
dry ginger ale
earl grey tea
energy drink
english breakfast tea : proper=1
espresso = expresso
espresso coffee
espresso shot
espresso shots
fiery ginger beer
filter coffee
fizzy drink
french roast coffee : proper=1
fresh lemonade
freshly brewed coffee
ginger ale
ginger beer
grape soda
grapefruit soda
green tea
herbal tea
hibiscus tea
horchata
hot brewed coffee
hot chocolate
hot cocoa
hot coffee
hot tea
iced coffee
iced tea
indian tonic water : proper=1
jamaica agua fresca
jasmine tea
kombucha
kvass
lapsang souchong
lemon tea
lemon-lime beverage : kind=soda
lemon-lime carbonated beverage : kind=soda
lemon-lime drink : kind=soda
lemon-lime soda : kind=soda key=lemon-lime-soda
lemon-lime soft drink : kind=soda key=lemon-lime-soda
lemonade : dish
lime soda
limeade : dish
mint tea
mocha
oolong tea
orange pop
orange soda
orangeade
peach iced tea
pineapple soda
pink lemonade
raspberry soda
red soda
rooibos
rooibos tea
root beer
slimline tonic
soda : ambiguous
soft drink : ambiguous
sparkling lemonade
sports drink
strawberry soda
strong black coffee
strong black tea
strong brewed coffee
strong coffee
strong espresso
strong tea
sweet tea
tea : key=tea
tepache
tonic : key=tonic-water ambiguous
tonic water : key=tonic-water
traditional lemonade
unsweetened iced tea
water kefir
white tea
@ FOOD noun mass group=beverage
barley tea
black tea leaves
cherry drink mix
coffee beans = coffee bean
coffee crystals
coffee granules : key=instant-coffee
coffee powder
culinary matcha
dark roast coffee beans
decaf instant coffee
dried tea leaves
drink mix
earl grey tea leaves
espresso bean
espresso beans
espresso grounds
espresso powder : key=instant-coffee
finely ground coffee
flavored instant coffee
flavoured coffee powder
freeze-dried coffee
freshly ground coffee
genmaicha
green tea leaves
green tea powder
ground coffee = coffee grounds
ground coffee beans
ground espresso
hojicha powder
iced tea mix
instant coffee : key=instant-coffee
instant coffee crystals
instant coffee granules : key=instant-coffee
instant coffee powder : key=instant-coffee
instant espresso
instant espresso coffee
instant espresso coffee powder
instant espresso granules
instant espresso powder : key=instant-coffee
instant iced tea mix
instant lemonade mix
instant tea
jasmine tea leaves
lemonade mix
lemonade powder
loose black tea
loose tea
loose-leaf tea
matcha : key=matcha
matcha green tea powder
matcha powder : key=matcha
orange drink mix
orange drink powder
orange-flavoured drink powder
powdered drink mix
powdered lemonade
powdered lemonade mix
strawberry milk powder
tea leaves = tea leaf
tea powder
unsweetened drink mix
unsweetened powdered drink mix
unsweetened soft drink mix
whole coffee beans
@ FOOD noun group=beverage
black tea bag
chai tea bag
chamomile tea bag
earl grey tea bag
english breakfast tea bag : proper=1
family-size tea bag
green tea bag
herbal tea bag
mint tea bag
orange pekoe tea bag
peppermint tea bag
tea bag = tea bags : key=tea-bag
teabag : key=tea-bag
