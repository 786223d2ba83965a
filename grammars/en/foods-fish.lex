# Fish and shellfish, fresh, smoked, cured, tinned; roe.

# Fish
@ FOOD noun mass group=fish kind=fish
ahi : key=yellowfin-tuna
ahi tuna : key=yellowfin-tuna
aji fish : key=horse-mackerel
albacore : key=albacore-tuna
albacore tuna : key=albacore-tuna
amberjack
arctic char : proper=1
atlantic salmon : proper=1
bangus : key=milkfish
barbecued eel : key=unagi
barramundi
barramundi fillet = barramundi fillets : kind=barramundi
basa : key=basa
bass : ambiguous
bass fillets : key=sea-bass
black bass : key=black-sea-bass
black cod : key=black-cod
black sea bass : key=black-sea-bass
blowfish : key=blowfish
blue eye cod : key=blue-eye-trevalla
blue-eye trevalla : key=blue-eye-trevalla
bluefin tuna
bluefish
bluegill : key=bluegill
bombay duck : key=bombil
bombil : key=bombil
bonito : key=skipjack-tuna
branzino
bream
brill : ambiguous
brown trout : key=river-trout
butterfish
carp : ambiguous
catfish
catfish fillet = catfish fillets : kind=catfish
chilean sea bass : proper=1 key=chilean-sea-bass
chinook : key=king-salmon
chinook salmon : key=king-salmon
cobia
cod = cods
cod fillet = cod fillets, fillet of cod : kind=cod key=cod-fillet
cod loin : kind=cod key=cod-fillet
cod loins : kind=cod key=cod-fillet
cod steaks : kind=cod key=cod-fillet
coho : key=coho-salmon
coho salmon : key=coho-salmon
coley : key=pollock ambiguous
conger eel
crappie
croaker : key=croaker
dab : ambiguous
dhufish
dogfish : key=shark
dolphinfish : key=mahi-mahi
dorade : key=sea-bream
dorado : key=mahi-mahi
dover sole : proper=1
drum fish : key=croaker
eel = eels : key=eel
firm white fish : key=white-fish
firm white fish fillet : key=white-fish
fish
fish bones = fish bone : key=fish-bones
fish carcass : key=fish-bones
fish fillets = fish fillet, fillet of fish, fillets of fish, fillet fish : key=fish
fish frames : key=fish-bones
fish heads = fish head
fish pie mix : key=fish-pie-mix
fish steaks = fish steak
fish trimmings : key=fish-bones
flake fillets : key=shark
flaky white fish : key=white-fish
flathead
flounder : ambiguous
flying fish = flyingfish
freshwater eel : key=eel
fugu : key=blowfish
gar fish
garfish
gemfish
giant trevally : key=trevally
gilt-head bream : key=sea-bream
gilthead bream : key=sea-bream
grey mullet = gray mullet : key=grey-mullet
grey sole
grilled eel : key=unagi
grouper
gurnard
haddock
haddock fillet = haddock fillets : kind=haddock
hake
hake fillet = hake fillets : kind=hake
halibut
halibut fillet = halibut fillets : kind=halibut key=halibut-fillet
halibut steak : kind=halibut key=halibut-fillet
halibut steaks : kind=halibut key=halibut-fillet
hamachi : key=yellowtail-snapper
herring = herrings
hilsa : key=hilsa
hoki
horse mackerel : key=horse-mackerel
huss : key=shark ambiguous
ilish : key=hilsa
john dory : proper=2
king mackerel : key=king-mackerel
king salmon : key=king-salmon
kingfish : key=king-mackerel
kingklip
lake trout : key=river-trout
lemon sole
lemon sole fillets : kind=sole key=sole-fillet
ling : key=lingcod ambiguous
lingcod : key=lingcod
lionfish
lutefisk
mackerel
mackerel fillet = mackerel fillets : kind=mackerel
mahi : key=mahi-mahi ambiguous
mahi mahi : key=mahi-mahi
milkfish : key=milkfish
mixed fish : key=fish-pie-mix
monkfish
monkfish fillet = monkfish fillets : kind=monkfish
monkfish tail
mooneye
mullet : key=grey-mullet
murray cod : proper=1
ocean perch : key=ocean-perch
ocean trout : key=sea-trout
oily fish
opah
orange roughy
orata : key=sea-bream
pangasius : key=basa
parrotfish
patagonian toothfish : key=chilean-sea-bass
perch : ambiguous
pike : ambiguous
pikeperch : key=zander
pink salmon
pink snapper : key=snapper
plaice
plaice fillet = plaice fillets : kind=plaice
pollock = pollack : key=pollock
pomfret
pompano
porgy : key=porgy
pufferfish : key=blowfish
rainbow trout
ray wing : key=skate-wing
red drum : key=croaker
red mullet
red salmon : key=sockeye-salmon
red snapper
red snapper fillet : kind=snapper key=snapper-fillet
red snapper fillets : kind=snapper key=snapper-fillet
redfish : key=ocean-perch
redfish drum : key=croaker
river cobbler : key=basa
river trout : key=river-trout
rock salmon : key=shark
rockfish
rohu
sablefish : key=black-cod
saithe : key=pollock
salmon = salmons
salmon fillet = salmon fillets, fillet of salmon, fillets of salmon : kind=salmon key=salmon-fillet
salmon portion : kind=salmon key=salmon-fillet
salmon portions : kind=salmon key=salmon-fillet
salmon side : kind=salmon key=salmon-fillet
salmon skin
salmon steak = salmon steaks : kind=salmon
salmon trimmings : kind=salmon
sand dab
sashimi salmon : key=sushi-grade-salmon
sashimi tuna : key=sushi-grade-tuna
sashimi-grade salmon : key=sushi-grade-salmon
sashimi-grade tuna : key=sushi-grade-tuna
scad : key=horse-mackerel ambiguous
scup : key=porgy
sea bass = seabass : key=sea-bass
sea bass fillet = sea bass fillets, fillet of sea bass : kind=bass
sea bream : key=sea-bream
sea trout : key=sea-trout
seer fish : key=seer-fish
shad : ambiguous
shark : ambiguous key=shark
side of salmon : kind=salmon key=salmon-fillet
skate : ambiguous
skate wing = skate wings : key=skate-wing
skipjack : key=skipjack-tuna
skipjack tuna : key=skipjack-tuna
smelt : ambiguous
smoked eel
snapper : key=snapper
snapper fillet = snapper fillets : kind=snapper key=snapper-fillet
snoek
sockeye : key=sockeye-salmon
sockeye salmon : key=sockeye-salmon
sole : ambiguous
sole fillet = sole fillets, fillet of sole, fillets of sole : kind=sole key=sole-fillet
spanish mackerel : proper=1
sprats = sprat
steelhead : key=sea-trout
steelhead trout : key=sea-trout
striped bass
sturgeon
sunfish : key=bluegill
surmai : key=seer-fish
sushi-grade salmon : key=sushi-grade-salmon
sushi-grade tuna : key=sushi-grade-tuna
swai : key=basa
swordfish
swordfish steak = swordfish steaks : kind=swordfish
tench
tilapia
tilapia fillet = tilapia fillets : kind=tilapia
tilefish
trevally : key=trevally
trout
trout fillet = trout fillets : kind=trout
tuna
tuna steak = tuna steaks : kind=tuna
turbot
turbot fillets = turbot fillet
unagi : key=unagi
wahoo
walleye
warehou
weakfish
white fish : key=white-fish
white fish fillet : key=white-fish
white fish fillets : key=white-fish
whitebait
whiting : ambiguous
whole fish
wild salmon
yellowfin tuna : key=yellowfin-tuna
yellowtail : key=yellowtail-snapper
yellowtail snapper : key=yellowtail-snapper
zander : key=zander
@ FOOD noun group=fish kind=fish
anchovy : kind=anchovy
eomuk : mass key=eomuk
fillet : ambiguous
fish ball
fish finger : group=prepared key=fish-finger
fish stick : group=prepared key=fish-finger
fish tofu : mass
fresh anchovy : kind=anchovy
fresh sardine : kind=sardine
kamaboko : mass
korean fish cake : mass key=eomuk proper=1
naruto : mass key=narutomaki ambiguous
narutomaki : mass key=narutomaki
sardine : kind=sardine

# Smoked, cured and tinned fish
@ FOOD noun mass group=fish kind=fish
anchovies in oil : key=anchovy kind=anchovy
anchovy fillets = anchovy fillet : key=anchovy kind=anchovy
anchovy paste : kind=anchovy group=paste
arbroath smokies : kind=haddock key=smoked-haddock
bacalao : kind=cod key=salt-cod
bacalhau : kind=cod key=salt-cod
baccalà : kind=cod key=salt-cod
bloaters = bloater
bonito flakes : key=bonito-flakes
boquerones : kind=anchovy key=white-anchovies
canned anchovies : key=anchovy kind=anchovy
canned mackerel : kind=mackerel key=tinned-mackerel
canned pink salmon : kind=salmon key=canned-salmon
canned salmon : kind=salmon key=canned-salmon
canned sardines : kind=sardine key=tinned-sardines
canned tuna : kind=tuna key=canned-tuna
cold-smoked salmon : kind=salmon key=smoked-salmon
cured salmon : kind=salmon key=gravlax
dried anchovies = dried anchovy : kind=anchovy key=dried-anchovies
dried bonito : key=bonito-flakes
dried bonito flakes : key=bonito-flakes
dried cod : key=stockfish
dried fish : key=dried-fish
dried salt cod : kind=cod key=salt-cod
dried salted fish : key=dried-fish
dyed smoked haddock : kind=haddock key=smoked-haddock
finnan haddie : kind=haddock key=smoked-haddock
fish paste : group=paste
flaked hot smoked salmon : kind=salmon key=hot-smoked-salmon
gravlax = gravadlax : kind=salmon key=gravlax
hot-smoked salmon : kind=salmon key=hot-smoked-salmon
hot-smoked trout : kind=trout key=smoked-trout
ikan bilis : kind=anchovy key=dried-anchovies
katsuobushi : key=bonito-flakes
kiln-roasted salmon : kind=salmon key=hot-smoked-salmon
kipper fillet : key=kippers
kipper fillets : key=kippers
kippers = kipper : key=kippers
lox : kind=salmon key=lox
marinated anchovies : kind=anchovy key=white-anchovies
myeolchi : kind=anchovy key=dried-anchovies
nova lox : kind=salmon key=lox
peppered smoked mackerel : kind=mackerel key=smoked-mackerel
pickled herring : kind=herring
rollmops = rollmop : key=rollmops
salt cod : kind=cod key=salt-cod
salt fish : kind=cod key=salt-cod
salt fish dried : key=dried-fish
salted anchovies : key=anchovy kind=anchovy
salted cod : kind=cod key=salt-cod
salted fish : key=dried-fish
saltfish : kind=cod key=salt-cod
sardines in oil : kind=sardine key=tinned-sardines
sardines in tomato sauce : kind=sardine key=tinned-sardines
smoked cod : kind=cod
smoked fish
smoked haddock : kind=haddock key=smoked-haddock
smoked haddock fillets : kind=haddock key=smoked-haddock
smoked mackerel : kind=mackerel key=smoked-mackerel
smoked mackerel fillet : kind=mackerel key=smoked-mackerel
smoked mackerel fillets : kind=mackerel key=smoked-mackerel
smoked salmon : kind=salmon key=smoked-salmon
smoked trout : kind=trout key=smoked-trout
smoked whitefish : kind=whitefish key=smoked-whitefish
soused herring : key=rollmops
stockfish : key=stockfish
tinned anchovies : key=anchovy kind=anchovy
tinned mackerel : kind=mackerel key=tinned-mackerel
tinned red salmon : kind=salmon key=canned-salmon
tinned salmon : kind=salmon key=canned-salmon
tinned sardines = tinned sardine : kind=sardine key=tinned-sardines
tinned tuna : kind=tuna key=canned-tuna
tuna in brine : kind=tuna key=canned-tuna
tuna in oil : kind=tuna key=canned-tuna
tuna in olive oil : kind=tuna key=canned-tuna
tuna in spring water : kind=tuna key=canned-tuna
tuna in water : kind=tuna key=canned-tuna
tuna mayo : kind=tuna group=prepared key=tuna-mayonnaise
tuna mayonnaise : kind=tuna group=prepared key=tuna-mayonnaise
undyed smoked haddock : kind=haddock key=smoked-haddock
white anchovies : kind=anchovy key=white-anchovies
whitefish : kind=whitefish key=smoked-whitefish

# Roe
@ FOOD noun mass group=fish kind=roe
bottarga
capelin roe : key=capelin-roe
caviar = caviare
cod roe = cod's roe : key=cod-roe
flying fish roe : key=flying-fish-roe
herring roe : key=herring-roe
ikura : key=salmon-roe
lumpfish caviar : key=lumpfish-roe
lumpfish roe : key=lumpfish-roe
masago : key=capelin-roe
mentaiko : key=mentaiko
pollock roe : key=mentaiko
roe : ambiguous
salmon caviar : key=salmon-roe
salmon eggs : key=salmon-roe
salmon roe : key=salmon-roe
smoked cod roe : key=cod-roe
smoked cod's roe : key=cod-roe
soft herring roe : key=herring-roe
tarako : key=mentaiko
tobiko : key=flying-fish-roe
trout caviar : key=trout-roe
trout roe : key=trout-roe

# Crustaceans
@ FOOD noun group=shellfish
baby prawn : kind=prawn key=north-atlantic-prawn
black tiger prawn : kind=prawn key=tiger-prawn
cold-water prawn : kind=prawn key=north-atlantic-prawn
cooked king prawn : kind=prawn key=cooked-prawn
cooked peeled prawn : kind=prawn key=cooked-prawn
cooked prawn : kind=prawn key=cooked-prawn
frozen prawn : kind=prawn
green prawn : kind=prawn key=raw-prawn
jumbo prawn : kind=prawn key=jumbo-prawn
king prawn : kind=prawn
large prawn : kind=prawn key=jumbo-prawn
north atlantic prawn : kind=prawn proper=2 key=north-atlantic-prawn
prawn : kind=prawn
raw king prawn : kind=prawn key=raw-prawn
raw prawn : kind=prawn key=raw-prawn
small prawn : kind=prawn key=north-atlantic-prawn
tiger prawn : kind=prawn key=tiger-prawn
@ FOOD noun mass group=shellfish kind=shrimp
baby shrimp : key=baby-shrimp
bay shrimp : key=baby-shrimp
brown shrimp = brown shrimps : key=brown-shrimp
canned shrimp : key=canned-shrimp
colossal shrimp : key=jumbo-shrimp
cooked shrimp
dried shrimp = dried shrimps : key=dried-shrimp
ebi : key=dried-shrimp
frozen shrimp
hae bee : key=dried-shrimp
jumbo shrimp = jumbo shrimps : key=jumbo-shrimp
pink shrimp
potted shrimps : key=brown-shrimp
raw shrimp
rock shrimp
salad shrimp : key=baby-shrimp
shrimp = shrimps
tiger shrimp : key=jumbo-shrimp
tinned shrimp : key=canned-shrimp
tiny shrimp : key=baby-shrimp
@ FOOD noun group=shellfish
balmain bug : key=moreton-bay-bug
blue crab : kind=crab key=blue-crab
blue swimmer crab : kind=crab key=blue-crab
breaded scampi : mass key=scampi
brown crab : kind=crab key=brown-crab
brown crab meat : mass kind=crab key=crab-meat
canned crab : mass kind=crab key=crab-meat
claw crab meat : mass kind=crab key=crab-meat
cooked lobster meat : mass kind=lobster key=lobster-meat
crab : kind=crab
crab claw : kind=crab
crab leg : kind=crab
crab meat = crabmeat : mass kind=crab key=crab-meat
crab stick : kind=crab key=crab-stick
crawdad : mass key=crawfish
crawfish : mass key=crawfish
crawfish tail : key=crawfish-tail
crawfish tail meat : key=crawfish-tail
cray : mass key=crayfish ambiguous
crayfish : mass key=crayfish
crayfish tail : kind=lobster key=spiny-lobster
crayfish tail meat : key=crawfish-tail
dressed crab : kind=crab key=brown-crab
dublin bay prawn : kind=langoustine key=langoustine
dungeness crab : kind=crab proper=1 key=dungeness-crab
imitation crab : kind=crab key=crab-stick
imitation crab meat : kind=crab key=crab-stick
imitation crabmeat : kind=crab key=crab-stick
jumbo lump crab : mass kind=crab key=crab-meat
king crab : kind=crab key=king-crab
king crab leg : kind=crab key=king-crab
langoustine : kind=langoustine key=langoustine
lobster : kind=lobster
lobster claw : kind=lobster
lobster meat : mass kind=lobster key=lobster-meat
lobster shell : key=lobster-shell
lobster tail : kind=lobster
lump crab meat : mass kind=crab key=crab-meat
lump crabmeat : mass kind=crab key=crab-meat
moreton bay bug : proper=2 key=moreton-bay-bug
mud crab : kind=crab key=dungeness-crab
norway lobster : kind=langoustine key=langoustine
picked crab meat : mass kind=crab key=crab-meat
prawn head : key=lobster-shell
prawn heads and shells : key=lobster-shell
prawn shell : key=lobster-shell
rock lobster : kind=lobster key=spiny-lobster
scampi = scampo : mass key=scampi
seafood stick : kind=crab key=crab-stick
shrimp shell : key=lobster-shell
snow crab : kind=crab key=snow-crab
snow crab leg : kind=crab key=snow-crab
soft-shell crab : kind=crab
spider crab : kind=crab
spiny lobster : kind=lobster key=spiny-lobster
stone crab claw : kind=crab
surimi : kind=crab key=crab-stick
swimmer crab : kind=crab key=blue-crab
tinned crab : mass kind=crab key=crab-meat
white crab meat : mass kind=crab key=crab-meat
yabby : mass key=crayfish

# Molluscs
@ FOOD noun group=shellfish
abalone : mass key=abalone
baby clam : kind=clam key=canned-clam
baby octopus : mass key=octopus
baby squid : mass kind=squid key=baby-squid
bay scallop : kind=scallop key=bay-scallop
blue mussel : kind=mussel key=blue-mussel
bluepoint oyster : kind=oyster key=pacific-oyster
calamari = calamaris : mass key=calamari
calamari ring : mass key=calamari
canned clam : kind=clam key=canned-clam
canned mussel : kind=mussel key=tinned-mussel
canned oyster : kind=oyster key=smoked-oyster
cherrystone clam : kind=clam key=littleneck-clam
chopped clam : kind=clam key=canned-clam
clam
clam meat : mass kind=clam
clams in juice : kind=clam key=canned-clam
cockle : ambiguous
conch : mass ambiguous
conpoy : kind=scallop key=dried-scallop
cuttlefish : mass
cuttlefish ink : mass key=squid-ink
diver scallop : kind=scallop key=sea-scallop
dried oyster : kind=oyster
dried scallop : kind=scallop key=dried-scallop
dry-packed scallop : kind=scallop key=sea-scallop
frozen mixed seafood : mass key=seafood-mix
frozen seafood mix : mass key=seafood-mix
geoduck
green mussel : kind=mussel key=green-lipped-mussel
green-lipped mussel : kind=mussel key=green-lipped-mussel
greenshell mussel : kind=mussel key=green-lipped-mussel
hand-dived scallop : kind=scallop key=sea-scallop
hard clam : kind=clam key=littleneck-clam
jellyfish : mass
king scallop : kind=scallop key=sea-scallop
limpet
littleneck : kind=clam key=littleneck-clam
littleneck clam : kind=clam key=littleneck-clam
manila clam : kind=clam key=littleneck-clam
marinara mix : mass key=seafood-mix
minced clam : kind=clam key=canned-clam
mixed seafood : mass key=seafood-mix
mussel
native oyster : kind=oyster key=pacific-oyster
octopus = octopi : mass key=octopus
octopus tentacle : mass key=octopus
oyster
pacific oyster : kind=oyster proper=1 key=pacific-oyster
palourde : kind=clam key=littleneck-clam
periwinkle : key=winkle
pipi = pipis : key=pipi
pippies : key=pipi
pāua : mass key=abalone
quahog : kind=clam key=littleneck-clam
queen scallop : kind=scallop key=bay-scallop
queenie : kind=scallop key=bay-scallop ambiguous
razor clam = razorclam : kind=clam
rock oyster : kind=oyster key=pacific-oyster
rope-grown mussel : kind=mussel key=blue-mussel
scallop
sea cucumber
sea scallop : kind=scallop key=sea-scallop
sea urchin : mass key=sea-urchin
seafood = seafoods : mass
seafood cocktail mix : mass key=seafood-mix
seafood mix : mass key=seafood-mix
shellfish : mass
shucked oyster : kind=oyster key=pacific-oyster
smoked mussel : kind=mussel key=tinned-mussel
smoked oyster : kind=oyster key=smoked-oyster
squid = squids : mass
squid hood : mass kind=squid key=baby-squid
squid ink : mass key=squid-ink
squid ring : mass kind=squid key=baby-squid
squid tube : mass kind=squid key=baby-squid
squid tubes : mass kind=squid key=baby-squid
steamer clam : kind=clam key=littleneck-clam
surf clam : kind=clam key=littleneck-clam
sydney rock oyster : kind=oyster key=pacific-oyster
tinned clam : kind=clam key=canned-clam
tinned mussel : kind=mussel key=tinned-mussel
tinned oyster : kind=oyster key=smoked-oyster
tinned smoked oyster : kind=oyster key=smoked-oyster
uni : mass key=sea-urchin ambiguous
vongole : kind=clam key=littleneck-clam
whelk
winkle : key=winkle

# More fish and shellfish
@ FOOD noun mass group=fish kind=fish
bluefin : key=bluefin-tuna
brook trout
cisco
cod cheeks : key=fish-cheeks
codfish : key=cod
coley fillets : kind=pollock key=pollock-fillet
cusk
fish cheeks : key=fish-cheeks
fish collar : key=fish-cheeks
fish maw
fishballs
halibut cheeks : key=fish-cheeks
hamachi kama : key=fish-cheeks
kippered salmon : kind=salmon
lake herring
milt : kind=roe
pickerel
pilchards = pilchard : key=pilchards
pilchards in tomato sauce : key=pilchards
pollock fillet = pollock fillets : kind=pollock key=pollock-fillet
sablefish fillet
salmon collar : key=fish-cheeks
scrod
tinned pilchards : key=pilchards
tunny : key=tuna
white fish loin : key=white-fish-steaks
white fish loins : key=white-fish-steaks
white fish steaks : key=white-fish-steaks
@ FOOD noun group=shellfish
clam nectar : mass liquid key=oyster-liquor
crab paste : mass
langouste
mussel liquor : mass liquid key=oyster-liquor
oyster juice : mass liquid key=oyster-liquor
oyster liquor : mass liquid key=oyster-liquor
river prawn : kind=prawn
salted prawn : kind=prawn
sea snail : key=sea-snail
squid tentacle : kind=squid
tomalley : mass
top shell : key=sea-snail
turtle meat : mass
