# Meat, poultry, game, offal, cured meat and sausages.
# What the attributes mean stands in foods-vegetables.lex.

# Poultry
@ FOOD noun group=poultry kind=chicken
baby chicken : kind=poussin key=poussin
black chicken : mass key=silkie-chicken
boiling fowl : key=boiling-fowl
boiling hen : key=boiling-fowl
breaded chicken : mass group=prepared key=breaded-chicken
breast fillet : key=chicken-breast-fillet
broiler chicken : key=roaster-chicken
canned chicken : mass key=canned-chicken
capon : kind=capon
chicken = chook : mass
chicken back
chicken bone
chicken breast = breast of chicken, breasts of chicken : key=chicken-breast
chicken breast fillet : key=chicken-breast-fillet
chicken breast half : key=chicken-breast plural=halves
chicken carcass : key=chicken-carcass
chicken chunk : mass key=diced-chicken
chicken cutlet : key=chicken-cutlet
chicken drum : key=chicken-drumstick
chicken drumstick : key=chicken-drumstick
chicken escalope : key=chicken-cutlet
chicken fillet : key=chicken-fillet
chicken flat : key=chicken-wingette
chicken foot = chicken feet : mass
chicken frame : key=chicken-carcass
chicken goujon : key=chicken-fillet
chicken joint : key=chicken-piece
chicken kebab meat : mass
chicken leg = leg of chicken : key=chicken-leg
chicken leg and thigh : key=chicken-quarter
chicken leg quarter : key=chicken-leg
chicken maryland : key=chicken-quarter
chicken meat : mass
chicken mini fillet : key=chicken-tender
chicken neck
chicken nugget : group=prepared
chicken parts : key=chicken-piece
chicken patty : mass group=prepared key=breaded-chicken
chicken piece : key=chicken-piece
chicken portion : key=chicken-piece
chicken quarter : key=chicken-quarter
chicken skin : mass
chicken strip : key=chicken-tender
chicken supreme = supreme of chicken
chicken tender = chicken tenders : key=chicken-tender
chicken tenderloin : key=chicken-tender
chicken thigh = thigh of chicken
chicken thigh fillet
chicken wing : key=chicken-wing
chicken wingette : key=chicken-wingette
cooked chicken : mass key=cooked-chicken
cooked shredded chicken : mass key=cooked-chicken
corn-fed chicken : mass
cornish game hen : kind=hen key=cornish-hen proper=1
cornish hen : kind=hen proper=1 key=cornish-hen
crumbed chicken : mass group=prepared key=breaded-chicken
diced chicken : mass key=diced-chicken
fryer chicken : key=roaster-chicken
game hen : kind=hen key=cornish-hen
leftover chicken : mass key=cooked-chicken
mini chicken fillet : key=chicken-tender
party wing : key=chicken-wing
poached chicken : mass key=cooked-chicken
poussin : kind=poussin key=poussin
roast chicken : mass key=rotisserie-chicken
roaster chicken : key=roaster-chicken
rotisserie chicken : mass key=rotisserie-chicken
shop-bought roast chicken : mass key=rotisserie-chicken
shredded chicken : mass key=cooked-chicken
shredded cooked chicken : mass key=cooked-chicken
silkie chicken : mass key=silkie-chicken
smoked chicken : mass group=cured-meat
spatchcock chicken = spatchcocked chicken : mass
spring chicken
stewing chicken pieces : mass key=diced-chicken
stewing hen : key=boiling-fowl
tinned chicken : mass key=canned-chicken
whole chicken = whole chickens : mass
whole fryer : key=roaster-chicken
wing flat : key=chicken-wingette
wingette : key=chicken-wingette
@ FOOD noun group=poultry kind=turkey
cooked turkey : mass key=cooked-turkey
diced turkey : mass
leftover turkey : mass key=cooked-turkey
roast turkey : mass key=cooked-turkey
turkey : mass ambiguous
turkey bone
turkey breast = breast of turkey
turkey breast fillet : key=turkey-fillet
turkey breast joint : key=turkey-roast
turkey carcass
turkey crown
turkey cutlet : key=turkey-steak
turkey drumstick : key=turkey-leg
turkey escalope : key=turkey-steak
turkey fillet : key=turkey-fillet
turkey joint : key=turkey-roast
turkey leg : key=turkey-leg
turkey neck
turkey roast : key=turkey-roast
turkey steak : key=turkey-steak
turkey tenderloin
turkey thigh
turkey wing
whole turkey = whole turkeys : mass
@ FOOD noun group=poultry
barbecued duck : mass kind=duck key=roast-duck
bird : ambiguous
chinese roast duck : mass kind=duck key=roast-duck proper=1
confit duck : kind=duck key=confit-duck-leg
confit duck leg = duck leg confit : kind=duck key=confit-duck-leg
confit of duck : kind=duck key=confit-duck-leg
duck : ambiguous kind=duck
duck breast : kind=duck key=duck-breast
duck breast fillet : kind=duck key=duck-breast
duck carcass : kind=duck
duck confit : kind=duck key=confit-duck-leg
duck leg : kind=duck
duckling : kind=duck
emu : mass ambiguous group=game
fowl : key=stewing-fowl ambiguous
giblet : group=offal
giblets : mass group=offal
goose : kind=goose plural=geese
goose breast : kind=goose
goose leg : kind=goose
guinea fowl = guineafowl : mass key=guinea-fowl
guinea hen : mass key=guinea-fowl
hen : ambiguous
magret : kind=duck key=duck-breast
ostrich : group=game key=ostrich-steak
ostrich fillet : group=game key=ostrich-steak
ostrich steak : group=game key=ostrich-steak
poultry : mass
quail : mass ambiguous group=game
roast duck : mass kind=duck key=roast-duck
roasted duck : mass kind=duck key=roast-duck
squab : group=game
stewing fowl : key=stewing-fowl
whole duck : kind=duck

# Minced and ground meat
@ FOOD noun mass group=ground-meat
beef mince : key=beef-mince kind=beef
burger mince : key=beef-mince kind=beef
chicken mince : key=chicken-mince kind=chicken
duck mince : kind=duck key=ground-duck
fish mince : group=fish key=fish-mince
goat mince : kind=goat key=goat-mince
ground beef : key=beef-mince kind=beef
ground bison : kind=bison key=ground-bison
ground buffalo : kind=bison key=ground-bison
ground chicken : key=chicken-mince kind=chicken
ground chuck : key=beef-mince kind=beef
ground duck : kind=duck key=ground-duck
ground goat : kind=goat key=goat-mince
ground lamb : key=lamb-mince kind=lamb
ground meat = ground meats : key=ground-meat
ground pork : key=pork-mince kind=pork
ground round : key=beef-mince kind=beef
ground round beef : key=beef-mince kind=beef
ground shrimp : group=shellfish key=prawn-mince
ground sirloin : key=beef-mince kind=beef
ground turkey : key=turkey-mince kind=turkey
ground veal : kind=veal key=ground-veal
ground venison : kind=venison key=venison-mince
hamburger : key=beef-mince kind=beef ambiguous
hamburger meat : key=beef-mince kind=beef
kangaroo mince : kind=kangaroo
keema
lamb mince : key=lamb-mince kind=lamb
lean beef mince : key=beef-mince kind=beef
lean ground beef : key=beef-mince kind=beef
lean ground turkey : key=turkey-mince kind=turkey
meatball mix : key=meatloaf-mix
meatloaf mix : key=meatloaf-mix
mince : ambiguous key=beef-mince
minced beef : key=beef-mince kind=beef
minced chicken : key=chicken-mince kind=chicken
minced duck : kind=duck key=ground-duck
minced fish : group=fish key=fish-mince
minced goat : kind=goat key=goat-mince
minced lamb : key=lamb-mince kind=lamb
minced meat : key=ground-meat
minced mutton : kind=mutton key=mutton-mince
minced pork : key=pork-mince kind=pork
minced prawn : group=shellfish key=prawn-mince
minced shrimp : group=shellfish key=prawn-mince
minced steak : key=beef-mince kind=beef
minced turkey : key=turkey-mince kind=turkey
minced veal : kind=veal key=ground-veal
minced venison : kind=venison key=venison-mince
mutton mince : kind=mutton key=mutton-mince
pork and veal mince = veal and pork mince
pork mince : key=pork-mince kind=pork
prawn mince : group=shellfish key=prawn-mince
steak mince : key=beef-mince kind=beef
turkey breast mince : key=turkey-mince kind=turkey
turkey mince : key=turkey-mince kind=turkey
turkey thigh mince : key=turkey-mince kind=turkey
veal mince : kind=veal key=ground-veal
venison mince : kind=venison key=venison-mince
@ FOOD noun group=ground-meat
beef patty : kind=patty key=hamburger-patty
beefburger : kind=patty key=hamburger-patty
burger patty : kind=patty key=hamburger-patty
chicken burger patty : kind=patty key=turkey-burger
frozen meatball
ground beef patty : kind=patty key=hamburger-patty
hamburger patty : kind=patty key=hamburger-patty
kofta : kind=kofta dish
lamb burger : kind=patty
pork patty : kind=patty
turkey burger : kind=patty key=turkey-burger
turkey patty : kind=patty key=turkey-burger

# Beef and veal
@ FOOD noun group=beef kind=beef
arrachera : mass key=carne-asada
back rib of beef : kind=rib key=beef-rib
bavette : kind=steak key=flank-steak
bavette steak : kind=steak key=flank-steak
beef : mass
beef back rib : kind=rib key=beef-rib
beef bone : key=beef-bone
beef brisket = brisket of beef : mass kind=brisket
beef cheek = beef cheeks : key=beef-cheek
beef chuck = chuck beef : mass key=beef-chuck
beef chuck roast : kind=roast key=chuck-roast
beef cube : mass key=diced-beef
beef cubes : mass key=diced-beef
beef dripping = beef drippings : mass group=fat
beef fillet : kind=tenderloin key=beef-tenderloin
beef fillet steak : key=fillet-steak kind=steak
beef flank : kind=steak key=flank-steak
beef for stew : mass key=stewing-beef
beef for stir-fry : mass key=shaved-beef
beef joint = joint of beef : key=beef-joint
beef marrow : mass group=offal key=bone-marrow
beef marrow bone : key=beef-marrow-bone
beef navel : mass key=beef-plate
beef neck : key=beef-neck-bone
beef neck bone : key=beef-neck-bone
beef plate : mass key=beef-plate
beef rib : kind=rib key=beef-rib
beef rib roast : kind=roast key=prime-rib
beef roast : kind=roast
beef round : mass kind=steak key=beef-round
beef round steak : mass kind=steak key=beef-round
beef shank = shank of beef
beef shin = shin beef, shin of beef, beef shins : mass
beef short rib : kind=rib key=short-rib
beef silverside : mass key=silverside
beef sirloin : kind=steak key=sirloin-steak
beef skirt : kind=steak key=skirt-steak
beef soup bone : key=beef-bone
beef steak = beefsteak : kind=steak
beef stew meat : mass key=stewing-beef
beef stir-fry strips : mass key=shaved-beef
beef strips : mass key=shaved-beef
beef tenderloin = tenderloin of beef : kind=tenderloin key=beef-tenderloin
beef tenderloin steak : key=fillet-steak kind=steak
beef topside : mass key=topside
blade steak : kind=steak key=blade-steak
bone marrow : mass group=offal key=bone-marrow
bone-in rib steak : kind=steak key=rib-steak
bone-in ribeye : kind=steak key=rib-steak
bone-in short rib : kind=rib key=short-rib
boneless beef chuck : mass key=beef-chuck
boneless chuck roast : kind=roast key=chuck-roast
boneless ribeye : kind=steak key=ribeye-steak
boneless short rib : kind=rib key=short-rib
bottom round : mass kind=roast key=round-roast
bottom round roast : kind=roast key=rump-roast
bottom round steak : kind=steak key=round-steak
braising beef : mass key=braising-beef
braising steak : mass key=braising-beef
brisket : mass kind=brisket
brisket flat : mass kind=brisket key=flat-cut-brisket
brisket point : mass kind=brisket key=brisket-point
bulgogi : mass key=bulgogi-beef
bulgogi beef : mass key=bulgogi-beef
carne asada : mass key=carne-asada
carne asada meat : mass key=carne-asada
casserole beef : mass key=stewing-beef
casserole steak : mass key=stewing-beef
chateaubriand : kind=tenderloin
chuck eye roast : kind=roast key=chuck-roast
chuck eye steak : kind=steak key=chuck-steak
chuck pot roast : kind=roast key=chuck-roast
chuck roast : kind=roast key=chuck-roast
chuck steak : kind=steak key=chuck-steak
cold roast beef : mass key=roast-beef
cooked beef : mass key=cooked-beef
cooked roast beef : mass key=roast-beef
cowboy steak : kind=steak key=rib-steak
cube steak : kind=steak key=minute-steak
cubed beef : mass key=diced-beef
cubed steak : kind=steak key=minute-steak
culotte steak : mass key=picanha
côte de boeuf : kind=steak key=rib-steak
deli roast beef : mass key=roast-beef
denver steak : kind=steak proper=1
diced beef : mass key=diced-beef
eye fillet : kind=tenderloin key=beef-tenderloin
eye of round : mass kind=roast key=round-roast
eye of round roast : mass kind=roast key=round-roast
eye round : mass kind=roast key=round-roast
feather blade : kind=steak key=flat-iron-steak
feather blade steak : kind=steak key=flat-iron-steak
filet mignon = filet mignons : key=fillet-steak kind=steak
fillet of beef : kind=tenderloin key=beef-tenderloin
fillet steak : key=fillet-steak kind=steak
flank steak : kind=steak key=flank-steak
flanken : kind=rib key=flanken-rib
flanken rib : kind=rib key=flanken-rib
flanken-cut short rib : kind=rib key=flanken-rib
flat iron : kind=steak key=flat-iron-steak
flat iron steak = flatiron steak : kind=steak key=flat-iron-steak
flat-cut brisket : mass kind=brisket key=flat-cut-brisket
fore rib of beef : mass key=rib-of-beef
forerib : mass key=rib-of-beef
frying steak : kind=steak key=minute-steak
gravy beef : mass
hanger steak : kind=steak key=hanger-steak
hanging tender : kind=steak key=hanger-steak
hot pot beef : mass key=shaved-beef
inside skirt steak : kind=steak key=skirt-steak
jacob's ladder : kind=rib key=short-rib
kansas city strip : kind=steak key=strip-steak
leftover beef : mass key=cooked-beef
leftover roast beef : mass key=roast-beef
london broil : mass proper=1
marrow bone : key=beef-marrow-bone
marrowbone : key=beef-marrow-bone
minute steak : kind=steak key=minute-steak
new york strip : kind=steak key=strip-steak
new york strip steak : kind=steak key=strip-steak
ny strip : kind=steak key=strip-steak
onglet : kind=steak key=hanger-steak
onglet steak : kind=steak key=hanger-steak
outside skirt steak : kind=steak key=skirt-steak
ox cheek : key=beef-cheek
oxtail = ox tail
oyster blade steak : kind=steak key=blade-steak
picanha : mass key=picanha
point-cut brisket : mass kind=brisket key=brisket-point
porterhouse : kind=steak key=porterhouse-steak
porterhouse steak : kind=steak key=porterhouse-steak
pot roast : kind=roast ambiguous
prime rib : kind=roast key=prime-rib
prime rib roast : kind=roast key=prime-rib
rib eye : kind=steak key=ribeye-steak
rib of beef = ribs of beef : mass key=rib-of-beef
rib roast : kind=roast
rib roast of beef : mass key=rib-of-beef
rib steak : kind=steak key=rib-steak
ribeye : kind=steak key=ribeye-steak
ribeye steak = rib-eye steak : kind=steak key=ribeye-steak
roast beef : mass key=roast-beef
roasting joint of beef : key=beef-joint
round beef : mass kind=roast key=round-roast
round roast : mass kind=roast key=round-roast
round steak : kind=steak key=round-steak
round tip steak : kind=steak key=round-steak
rump cap : mass key=picanha
rump roast : kind=roast key=rump-roast
rump roast of beef : kind=roast key=rump-roast
rump steak : kind=steak
sandwich steak : kind=steak key=minute-steak
scotch fillet : kind=steak key=ribeye-steak proper=1
scotch fillet steak : kind=steak key=ribeye-steak proper=1
shaved beef : mass key=shaved-beef
shaved steak : mass key=shaved-beef
shell steak : kind=steak key=strip-steak
short plate : mass key=beef-plate
short rib : kind=rib key=short-rib
shredded beef : mass key=cooked-beef
silverside : mass key=silverside
silverside of beef : mass key=silverside
sirloin : kind=steak key=sirloin-steak
sirloin cap : mass key=picanha
sirloin joint : kind=roast key=sirloin-roast
sirloin of beef : kind=roast key=sirloin-roast
sirloin roast = roast sirloin : kind=roast key=sirloin-roast
sirloin steak : kind=steak key=sirloin-steak
sirloin tip : key=sirloin-tip
sirloin tip roast : key=sirloin-tip
sirloin tip steak : key=sirloin-tip
skirt steak : kind=steak key=skirt-steak
soup bone : key=beef-bone
standing rib roast : kind=roast key=prime-rib
steak : kind=steak
stew beef : mass key=stewing-beef
stew meat : mass key=stewing-beef
stewing beef : mass key=stewing-beef
stewing steak : mass key=stewing-beef
stir-fry beef : mass key=shaved-beef
strip loin steak : kind=steak key=strip-steak
strip steak : kind=steak key=strip-steak
striploin : kind=steak key=strip-steak
striploin steak : kind=steak key=strip-steak
swiss steak : kind=steak proper=1
t-bone : kind=steak key=t-bone-steak
t-bone steak : kind=steak proper=1 key=t-bone-steak
tee bone steak : kind=steak key=t-bone-steak
tenderloin steak : key=fillet-steak kind=steak
thinly sliced beef : mass key=shaved-beef
tomahawk : kind=steak key=tomahawk-steak
tomahawk steak : kind=steak key=tomahawk-steak
top round : mass kind=roast key=round-roast
top round roast : mass kind=roast key=round-roast
top round steak : kind=steak key=round-steak
top sirloin : kind=steak key=sirloin-steak
top sirloin steak : kind=steak key=sirloin-steak
topside : mass key=topside
topside of beef : mass key=topside
tournedos : key=fillet-steak kind=steak
tri tip steak : key=tri-tip
tri-tip = tritip : key=tri-tip
tri-tip roast : key=tri-tip
wagyu : mass key=wagyu-beef
wagyu beef : mass key=wagyu-beef
whole beef fillet : kind=tenderloin key=beef-tenderloin
@ FOOD noun group=veal kind=veal
diced veal : mass key=diced-veal
osso buco : key=veal-shank
ossobuco : key=veal-shank
rose veal : mass
stewing veal : mass key=diced-veal
veal : mass
veal bone
veal breast
veal chop : key=veal-chop
veal cutlet : key=veal-cutlet
veal escalope
veal fillet : key=veal-fillet
veal loin
veal loin chop : key=veal-chop
veal osso buco : key=veal-shank
veal rib chop : key=veal-chop
veal roast : key=veal-roast
veal rump : key=veal-roast
veal scallopine : key=veal-cutlet
veal scallopini : key=veal-cutlet
veal schnitzel : key=veal-cutlet
veal shank : key=veal-shank
veal shin : key=veal-shank
veal shoulder
veal steak
veal stew meat : mass key=diced-veal
veal tenderloin : key=veal-fillet
@ FOOD noun group=game kind=bison
bison : mass ambiguous
bison steak
buffalo meat : mass key=water-buffalo-meat
water buffalo meat : mass key=water-buffalo-meat

# Pork
@ FOOD noun group=pork kind=pork
baby back : kind=rib key=baby-back-rib
baby back rib : kind=rib key=baby-back-rib
back rib : kind=rib key=baby-back-rib
barbecued pork : mass group=prepared key=char-siu
bone-in pork chop : kind=chop key=pork-chop
bone-in pork shoulder : key=pork-shoulder
boneless pork chop : kind=chop key=pork-chop
boneless pork shoulder : key=pork-shoulder
boston butt : key=pork-butt
boston butt roast : key=pork-butt
carnitas : mass group=prepared
center-cut pork chop : kind=chop key=pork-chop
char siu : mass group=prepared key=char-siu
char siu pork : mass group=prepared key=char-siu
chinese barbecue pork : mass group=prepared key=char-siu proper=1
chinese roast pork : mass key=cooked-pork proper=1
chop : ambiguous kind=chop
collar butt : key=pork-collar
cooked pork : mass key=cooked-pork
country-style pork rib : kind=rib key=country-style-rib
country-style rib : kind=rib key=country-style-rib
crackling : mass ambiguous key=crackling
crispy pork belly : mass key=cooked-pork
cubed pork : mass key=diced-pork
cutlet : ambiguous kind=cutlet
diced pork : mass key=diced-pork
escalope : kind=escalope
fresh ham : key=pork-leg
fresh pork hock : key=pork-shank
gammon joint : group=cured-meat kind=gammon
leftover pork : mass key=cooked-pork
picnic ham roast : key=picnic-shoulder
picnic shoulder : key=picnic-shoulder
pig cheek : key=pork-cheek
pig's foot : group=offal key=trotter plural=feet
pig's trotter : group=offal key=trotter
pigs' feet = pig's feet, pig feet : mass group=offal
pork : mass
pork belly = belly pork, belly of pork : key=pork-belly
pork belly slice : key=pork-belly
pork belly strip : key=pork-belly
pork blade steak : kind=steak key=pork-steak
pork bone
pork butt : key=pork-butt
pork cheek : key=pork-cheek
pork chop : kind=chop key=pork-chop
pork collar = collar of pork : key=pork-collar
pork crackling : mass key=crackling
pork crown roast : kind=roast key=pork-loin-roast
pork cubes : mass key=diced-pork
pork cutlet : kind=cutlet
pork cutlet chop : kind=chop key=pork-chop
pork escalope : key=pork-escalope
pork fillet = fillet of pork : key=pork-fillet
pork hock : key=pork-shank
pork joint : kind=roast key=pork-loin-roast
pork jowl
pork knuckle : key=pork-shank
pork leg = leg of pork, legs of pork : key=pork-leg
pork leg steak : kind=steak key=pork-steak
pork loin = loin of pork : key=pork-loin
pork loin chop : kind=chop key=pork-chop
pork loin joint : key=pork-loin
pork loin rib : kind=rib key=baby-back-rib
pork loin roast : kind=roast key=pork-loin-roast
pork loin steak : kind=steak key=pork-steak
pork meat : mass
pork medallion : key=pork-escalope
pork neck = neck of pork
pork neck bone
pork neck fillet : key=pork-collar
pork picnic : key=picnic-shoulder
pork rib : kind=rib key=pork-rib
pork rib chop : kind=chop key=pork-chop
pork rib roast : kind=roast key=pork-loin-roast
pork roast : kind=roast key=pork-loin-roast
pork schnitzel : key=pork-escalope
pork scotch fillet : key=pork-collar
pork shank : key=pork-shank
pork shoulder = shoulder of pork : key=pork-shoulder
pork shoulder butt : key=pork-butt
pork shoulder joint : key=pork-shoulder
pork shoulder picnic : key=picnic-shoulder
pork shoulder steak : kind=steak key=pork-steak
pork skin : mass
pork spare rib : kind=rib key=spare-rib
pork steak : kind=steak key=pork-steak
pork stir-fry strips : mass key=pork-strips
pork strips : mass key=pork-strips
pork tenderloin = tenderloin of pork : key=pork-fillet
pork trotter : group=offal key=trotter
pulled pork : mass group=prepared
rack of baby back ribs : mass kind=rib key=rack-of-ribs
rack of pork : kind=roast key=pork-loin-roast
rack of pork ribs : kind=rib key=pork-rib
rack of ribs = racks of ribs : mass kind=rib key=rack-of-ribs
rib : ambiguous kind=rib
ribeye pork chop : kind=chop key=pork-chop
riblet : kind=rib
roast pork : mass key=cooked-pork
shredded pork : mass key=cooked-pork
spare rib = sparerib : kind=rib key=spare-rib
st louis rib : kind=rib key=spare-rib
st louis-style rib : kind=rib key=spare-rib
stir-fry pork : mass key=pork-strips
suckling pig
thinly sliced pork : mass key=pork-strips
trotter : group=offal key=trotter

# Lamb, mutton and goat
@ FOOD noun group=lamb kind=lamb
barnsley chop : kind=chop key=lamb-chop
boned leg of lamb : mass key=leg-of-lamb
boneless lamb shoulder : mass key=shoulder-of-lamb
boneless leg of lamb : mass key=leg-of-lamb
breast of lamb = lamb breast : mass
butterflied leg of lamb : mass key=leg-of-lamb
cabrito : mass kind=goat key=kid-goat
cannon of lamb : key=lamb-loin
chevon : mass kind=goat key=goat-meat
cooked lamb : mass key=cooked-lamb
crown roast of lamb : mass
cubed lamb : mass key=diced-lamb
curry goat meat : mass kind=goat key=goat-meat
diced goat : mass kind=goat key=goat-meat
diced lamb : mass key=diced-lamb
gigot : mass key=leg-of-lamb
goat : mass ambiguous kind=goat
goat leg = leg of goat : kind=goat
goat meat : mass kind=goat key=goat-meat
goat shank : kind=goat
goat shoulder : kind=goat
half leg of lamb : mass
hogget : mass
kid goat : mass kind=goat key=kid-goat
lamb : mass
lamb backstrap : key=lamb-loin
lamb bone
lamb chop : kind=chop key=lamb-chop
lamb chump : key=lamb-rump
lamb chump chop : kind=chop key=lamb-chop
lamb cubes : mass key=diced-lamb
lamb cutlet : kind=cutlet key=lamb-cutlet
lamb fillet
lamb forequarter chop : kind=chop key=lamb-chop
lamb leg chop : kind=chop key=lamb-chop
lamb leg roast : mass key=leg-of-lamb
lamb leg steak : key=lamb-steak
lamb loin = loin of lamb : key=lamb-loin
lamb loin chop : kind=chop key=lamb-chop
lamb loin fillet : key=lamb-loin
lamb lollipop : kind=cutlet key=lamb-cutlet
lamb neck = neck of lamb : key=lamb-neck
lamb neck chop : key=lamb-neck
lamb neck fillet : key=lamb-neck
lamb rib : kind=rib key=lamb-rib
lamb rib chop : kind=cutlet key=lamb-cutlet
lamb riblet : kind=rib key=lamb-rib
lamb rump : key=lamb-rump
lamb shank
lamb shoulder chop : kind=chop key=lamb-chop
lamb steak : key=lamb-steak
lamb stew meat : mass key=diced-lamb
leftover lamb : mass key=cooked-lamb
leg of lamb = legs of lamb, lamb leg, lamb legs : mass key=leg-of-lamb
leg of mutton = mutton leg : mass kind=mutton key=leg-of-mutton
mutton : mass kind=mutton
mutton shoulder : mass kind=mutton key=leg-of-mutton
rack of lamb = lamb rack, racks of lamb, lamb racks : mass
roast lamb : mass key=cooked-lamb
saddle of lamb = lamb saddle : mass
scrag end of lamb : key=lamb-neck
shoulder of lamb = lamb shoulder, lamb shoulders, shoulders of lamb : mass key=shoulder-of-lamb
shoulder of mutton : mass kind=mutton key=leg-of-mutton
stewing goat : mass kind=goat key=goat-meat

# Game
@ FOOD noun group=game
alligator : mass key=alligator
alligator meat : mass key=alligator
alligator tail : mass key=alligator
boar : mass key=wild-boar
caribou : mass
cricket flour : mass key=crickets
cricket powder : mass key=crickets
crickets : mass ambiguous key=crickets
crocodile : mass key=crocodile
crocodile tail : mass key=crocodile
deer meat : mass kind=venison
diced venison : mass kind=venison key=diced-venison
elk : mass ambiguous
elk steak
escargot : group=shellfish key=snail
frogs' legs = frog legs, frog's legs, frog leg, frog's leg : mass
game : mass ambiguous
game meat : mass key=game-meat
gator : mass key=alligator ambiguous
goose meat : mass
grouse : mass ambiguous
hare : ambiguous
haunch of venison : kind=venison key=venison-shoulder
horse meat = horsemeat : mass
kangaroo : mass key=kangaroo
kangaroo fillet : mass key=kangaroo
kangaroo steak : mass key=kangaroo
mallard : key=wild-duck
mixed game : mass key=game-meat
moose meat : mass
partridge
pheasant
pheasant breast : kind=pheasant
pigeon : key=pigeon
pigeon breast : kind=pigeon
rabbit : ambiguous
rabbit leg : kind=rabbit
rabbit loin : kind=rabbit key=rabbit-loin
saddle of rabbit : kind=rabbit key=rabbit-loin
saddle of venison : kind=venison key=venison-loin
snail : group=shellfish ambiguous key=snail
snipe : ambiguous
squirrel : ambiguous
stewing venison : mass kind=venison key=diced-venison
venison : mass kind=venison
venison backstrap : kind=venison key=venison-loin
venison fillet : kind=venison key=venison-steak
venison haunch : kind=venison key=venison-shoulder
venison leg : kind=venison key=venison-shoulder
venison loin : kind=venison key=venison-loin
venison medallion : kind=venison key=venison-steak
venison shoulder : kind=venison key=venison-shoulder
venison steak : kind=venison key=venison-steak
venison stew meat : mass kind=venison key=diced-venison
wild boar : mass key=wild-boar
wild boar shoulder : mass key=wild-boar
wild duck : key=wild-duck
wild rabbit : kind=rabbit
wild turkey
wood pigeon : key=pigeon
woodcock

# Offal
@ FOOD noun group=offal
beef heart : key=beef-heart
beef kidney : key=ox-kidney
beef liver : mass key=beef-liver
beef tendon : key=tendon
beef tongue : key=ox-tongue
beef tripe : mass key=honeycomb-tripe
blood : mass ambiguous key=blood
brain : ambiguous
calf brains : key=lambs-brain
calf's brain : key=lambs-brain
calf's foot : key=cow-foot plural=feet
calf's head : key=pigs-head
calf's kidney : key=veal-kidney
calf's liver = calves' liver, calf liver : mass key=calfs-liver
caul : mass group=fat key=caul-fat
caul fat : mass group=fat key=caul-fat
chicken gizzard : key=gizzard
chicken heart
chicken liver
chitterlings = chitlins, chitterling : mass
cockscomb
collagen casing : key=sausage-casing
cow foot = cow's foot : key=cow-foot plural=feet
cow heel : key=cow-foot
cow hoof : key=cow-foot
crépine : mass group=fat key=caul-fat
duck gizzard : key=gizzard
duck heart
duck liver : key=duck-liver
foie gras : mass
gizzard : key=gizzard
goat head : key=pigs-head
goose liver : key=duck-liver
haggis = haggises : mass group=sausage
heart : ambiguous
hog casing : key=sausage-casing
honeycomb tripe : mass key=honeycomb-tripe
kidney : ambiguous
lamb fries
lamb sweetbread : key=sweetbread
lamb's brain = lamb brain : key=lambs-brain
lamb's heart = lamb heart
lamb's kidney = lamb kidney, lambs' kidney
lamb's liver = lambs' liver, lamb liver : mass
lamb's sweetbread : key=sweetbread
lamb's tongue = lamb tongue : key=lambs-tongue
lengua : key=ox-tongue
liver : ambiguous
lung : ambiguous
natural casing : key=sausage-casing
neck bone
offal : mass
ox heart : key=beef-heart
ox kidney : key=ox-kidney
ox liver : mass key=beef-liver
ox tongue : key=ox-tongue
pig's blood : mass key=blood
pig's ear = pig ear : key=pigs-ear
pig's head : key=pigs-head
pig's kidney : key=pigs-kidney
pig's liver : mass key=pigs-liver
pig's tail : key=pigs-tail
pig's tongue : key=lambs-tongue
pork blood : mass key=blood
pork ear : key=pigs-ear
pork head : key=pigs-head
pork kidney : key=pigs-kidney
pork liver : mass key=pigs-liver
pork tail : key=pigs-tail
pork tongue : key=lambs-tongue
rocky mountain oyster
salted pigtail : key=pigs-tail
sausage casing : key=sausage-casing
sheep casing : key=sausage-casing
smoked turkey leg : group=cured-meat key=smoked-turkey-wing
smoked turkey neck : group=cured-meat key=smoked-turkey-wing
smoked turkey wing : group=cured-meat key=smoked-turkey-wing
steak and kidney mix : key=ox-kidney
sweetbread : key=sweetbread
tendon : ambiguous key=tendon
tongue : ambiguous
tripe : mass
veal kidney : key=veal-kidney
veal liver : mass key=calfs-liver
veal sweetbread : key=sweetbread

# Cured, smoked, cooked and tinned meat
@ FOOD noun group=cured-meat
american-style bacon : mass kind=bacon key=streaky-bacon
applewood bacon : mass kind=bacon key=smoked-bacon
applewood-smoked bacon : mass kind=bacon key=smoked-bacon
back bacon : mass kind=bacon key=back-bacon
bacon : mass
bacon bits = bacon bit : mass kind=bacon key=bacon-bits
bacon crumbles : mass kind=bacon key=cooked-bacon
bacon end : kind=bacon key=bacon-end
bacon hock
bacon joint : mass kind=bacon key=slab-bacon
bacon lardon : key=lardon kind=bacon
bacon offcut : kind=bacon key=bacon-end
bacon rasher : mass kind=bacon key=back-bacon
baked ham : mass kind=ham key=baked-ham
baloney : mass key=polony
bayonne ham : mass kind=ham proper=1
beef bresaola : mass
beef jerky : mass key=beef-jerky
biltong : mass
black forest ham : mass kind=ham proper=2
boiled ham : mass kind=ham key=cooked-ham
bologna : mass key=mortadella ambiguous
bone-in ham : mass kind=ham key=baked-ham
braunschweiger : mass key=liverwurst
brawn : mass ambiguous key=brawn
bresaola : mass
brussels pâté : mass group=prepared key=pâté proper=1
bully beef : mass key=corned-beef
canadian bacon : mass kind=bacon proper=1 key=canadian-bacon
canned corned beef : mass key=corned-beef
canned luncheon meat : mass key=luncheon-meat
capicola : mass key=coppa
capicollo : mass key=coppa
capocollo : mass key=coppa
charcuterie : mass key=charcuterie
chicharrón : mass key=pork-scratchings
chicken liver pâté : mass group=prepared key=pâté
chinese bacon : mass proper=1 key=chinese-bacon
chinese ham : mass proper=1 key=chinese-ham
chipped beef : mass key=dried-beef
coconut bacon : mass group=tofu kind=bacon key=vegan-bacon
cold cut : mass key=deli-meat
cooked bacon : mass kind=bacon key=cooked-bacon
cooked ham : mass kind=ham key=cooked-ham
cooked sliced meat : mass key=deli-meat
coppa : mass ambiguous key=coppa
corned beef : mass key=corned-beef
corned beef brisket : mass key=corned-beef
corned silverside : mass key=corned-beef
cotto salami : mass kind=salami key=genoa-salami
country ham : mass kind=ham
crispy bacon : mass kind=bacon key=cooked-bacon
crumbled bacon : mass kind=bacon key=bacon
cubed pancetta : mass kind=pancetta key=cubed-pancetta
cured meat : mass key=charcuterie
cured meats : mass key=charcuterie
danish salami : mass kind=salami proper=1 key=danish-salami
deli ham : mass kind=ham key=cooked-ham
deli meat : mass key=deli-meat
deli turkey : mass kind=turkey key=deli-turkey
devon sausage : mass key=polony proper=1
diced pancetta : mass kind=pancetta key=cubed-pancetta
dried beef : mass key=dried-beef
duck pâté : mass group=prepared key=pâté
fatback : mass group=fat
finocchiona : mass kind=salami key=genoa-salami
fully cooked ham : mass kind=ham key=baked-ham
gammon : mass
gammon steak : kind=ham key=ham-steak
genoa salami : mass kind=salami proper=1 key=genoa-salami
german salami : mass kind=salami key=danish-salami proper=1
glazed ham : mass kind=ham key=baked-ham
green bacon : mass kind=bacon key=unsmoked-bacon
guanciale : mass
half ham : mass kind=ham key=baked-ham
ham : mass ambiguous
ham bone : kind=ham key=ham-bone
ham hock : kind=ham key=ham-hock
ham hough : kind=ham key=ham-hock
ham off the bone : mass kind=ham key=cooked-ham
ham shank : kind=ham
ham steak : kind=ham key=ham-steak
hard salami : mass kind=salami key=genoa-salami
head cheese : mass key=brawn
headcheese : mass key=brawn
hickory-smoked bacon : mass kind=bacon key=smoked-bacon
holiday ham : mass kind=ham key=baked-ham
honey-baked ham : mass kind=ham key=baked-ham
hungarian salami : mass kind=salami key=danish-salami proper=1
ibérico : mass kind=ham key=ibérico-ham proper=1
ibérico ham : mass kind=ham proper=1 key=ibérico-ham
irish bacon : mass kind=bacon key=back-bacon proper=1
italian salami : mass kind=salami key=genoa-salami proper=1
jamón : mass kind=ham
jamón ibérico : mass kind=ham key=ibérico-ham
jamón serrano : mass kind=ham key=serrano-ham
jerky : mass key=beef-jerky
jinhua ham : mass key=chinese-ham
kassler : mass key=smoked-pork
lap yuk : mass key=chinese-bacon
lardo : mass group=fat
lardon : kind=bacon
leftover ham : mass kind=ham key=cooked-ham
leftover ham bone : kind=ham key=ham-bone
leg ham : mass kind=ham key=cooked-ham
liver pâté : mass group=prepared key=pâté
liver sausage : mass key=liverwurst
liverwurst : mass key=liverwurst
lonza : mass
lunch meat : mass key=deli-meat
luncheon meat : mass key=luncheon-meat
middle bacon : mass kind=bacon key=back-bacon
milano salami : mass kind=salami key=genoa-salami
mixed charcuterie : mass key=charcuterie
mortadella : mass key=mortadella
nduja = 'nduja : mass
pancetta : mass
pancetta cube : mass kind=pancetta key=cubed-pancetta
parma ham : key=prosciutto mass kind=ham proper=1
pastrami : mass
peameal bacon : mass kind=bacon key=canadian-bacon
pepperoni : mass
polony : mass proper=1 key=polony
pork floss : mass key=pork-floss
pork rillettes : mass group=prepared key=rillettes
pork rind : mass key=pork-scratchings
pork rinds : mass key=pork-scratchings
pork scratchings : mass key=pork-scratchings
potted meat : mass
precooked bacon : mass kind=bacon key=cooked-bacon
prosciutto : key=prosciutto mass
prosciutto cotto : mass kind=ham
pâté : mass group=prepared ambiguous dish key=pâté
real bacon bits : mass kind=bacon key=bacon-bits
rillettes : mass group=prepared key=rillettes
rindless bacon : mass kind=bacon key=back-bacon
rousong : mass key=pork-floss
salami : mass
salt beef : mass
salt pork : mass
sandwich ham : mass kind=ham key=cooked-ham
sandwich meat : mass key=deli-meat
saucisson : mass kind=salami key=saucisson
saucisson sec : mass kind=salami key=saucisson
scrapple : mass
serrano ham : mass kind=ham key=serrano-ham
serrano jamon : mass kind=ham key=serrano-ham
shaved ham : mass kind=ham key=cooked-ham
short cut bacon : mass kind=bacon key=back-bacon
shortcut bacon : mass kind=bacon key=back-bacon
slab bacon : mass kind=bacon key=slab-bacon
sliced ham : mass kind=ham key=cooked-ham
sliced turkey : mass kind=turkey key=deli-turkey
smoked back bacon : mass kind=bacon key=smoked-bacon
smoked bacon : mass kind=bacon key=smoked-bacon
smoked duck : mass key=smoked-duck
smoked duck breast : mass key=smoked-duck
smoked gammon : mass kind=gammon
smoked ham : mass kind=ham key=cooked-ham
smoked ham hock : kind=ham key=smoked-ham-hock
smoked hock : kind=ham key=smoked-ham-hock
smoked pork : mass key=smoked-pork
smoked pork chop : mass key=smoked-pork
smoked pork hock : kind=ham key=smoked-ham-hock
smoked streaky bacon : mass kind=bacon key=smoked-bacon
smoked turkey : mass kind=turkey key=deli-turkey
soppressata : mass kind=salami key=genoa-salami
sopressata : mass kind=salami key=genoa-salami
speck : ambiguous mass
spiral ham : mass kind=ham key=baked-ham
spiral-cut ham : mass kind=ham key=baked-ham
streak o' lean = streak of lean : mass
streaky bacon : mass kind=bacon key=streaky-bacon
summer sausage : mass
tasso : mass key=tasso-ham
tasso ham : mass key=tasso-ham
tempeh bacon : mass group=tofu kind=bacon key=vegan-bacon
thick sliced bacon : mass kind=bacon key=thick-cut-bacon
thick-cut bacon : mass kind=bacon key=thick-cut-bacon
tinned corned beef : mass key=corned-beef
tinned pork : mass key=luncheon-meat
turkey bacon : mass kind=bacon
turkey ham : mass kind=turkey key=deli-turkey
turkey slices : mass kind=turkey key=deli-turkey
unsmoked back bacon : mass kind=bacon key=unsmoked-bacon
unsmoked bacon : mass kind=bacon key=unsmoked-bacon
vegan bacon : mass group=tofu kind=bacon key=vegan-bacon
vegetarian bacon : mass group=tofu kind=bacon key=vegan-bacon
wafer-thin ham : mass kind=ham key=cooked-ham
whole ham : mass kind=ham key=baked-ham
wiltshire ham : mass kind=ham key=york-ham
york ham : mass kind=ham proper=1 key=york-ham
yunnan ham : mass key=chinese-ham

# Sausages
@ FOOD noun group=sausage
andouille : mass kind=sausage key=andouille-sausage
andouille sausage : mass kind=sausage key=andouille-sausage
beef hot dog : kind=sausage key=hot-dog
beef sausage : kind=sausage
black pudding : mass key=black-pudding
blood pudding : mass key=black-pudding
blood sausage : mass key=black-pudding
boerewors : mass kind=sausage key=boerewors
boudin : mass
boudin blanc : mass key=white-pudding
boudin noir : mass key=black-pudding
bratwurst : kind=sausage
breakfast link : kind=sausage key=sausage-link
breakfast sausage : mass kind=sausage key=breakfast-sausage
bulk breakfast sausage : mass kind=sausage key=breakfast-sausage
bulk italian sausage : kind=sausage key=italian-sausage
bulk pork sausage : mass kind=sausage key=sausage-meat
bulk sausage : mass kind=sausage key=sausage-meat
cabanossi : mass kind=sausage key=kielbasa
cervelat = cervelas : mass
cheerio sausage : kind=sausage
chicken frank : kind=sausage key=turkey-dog
chicken sausage : kind=sausage
chinese sausage : mass kind=sausage proper=1 key=chinese-sausage
chipolata : kind=sausage
chorizo = chorizos : mass key=chorizo
chorizo sausage : mass key=chorizo
cocktail frank : kind=sausage key=cocktail-sausage
cocktail sausage : kind=sausage key=cocktail-sausage
cocktail wiener : kind=sausage key=cocktail-sausage
cooked meat : mass group=beef key=meat
cooking chorizo : mass kind=chorizo key=cooking-chorizo
country sausage : mass kind=sausage key=breakfast-sausage
cumberland ring : kind=sausage key=cumberland-sausage
cumberland sausage : kind=sausage proper=1 key=cumberland-sausage
cured chorizo : mass key=chorizo
debrecener : kind=sausage proper=1
dry-cured chorizo : mass key=chorizo
farmer's sausage : mass kind=sausage key=boerewors
fennel sausage : kind=sausage
frankfurter : kind=sausage key=frankfurter
fresh chorizo : mass kind=chorizo key=cooking-chorizo
ground pork sausage : mass kind=sausage key=sausage-meat
ground sausage : mass kind=sausage key=sausage-meat
hot dog = hotdog : kind=sausage key=hot-dog
hot dog frank : kind=sausage key=hot-dog-sausage
hot dog sausage : kind=sausage key=hot-dog-sausage
hot italian sausage : kind=sausage key=italian-sausage
italian sausage : kind=sausage proper=1 key=italian-sausage
italian turkey sausage : kind=sausage key=turkey-sausage proper=1
kabanos : mass kind=sausage key=kielbasa
kielbasa : mass kind=sausage key=kielbasa
knockwurst = knackwurst : kind=sausage
lamb sausage : kind=sausage
landjäger : mass
lap cheong : mass kind=sausage key=chinese-sausage
lap chong : mass kind=sausage key=chinese-sausage
lap xuong : mass kind=sausage key=chinese-sausage
lincolnshire sausage : kind=sausage key=cumberland-sausage
linguiça : mass
longaniza = longanisa : mass
loose sausage : mass kind=sausage key=sausage-meat
lorne sausage : mass proper=1 key=lorne-sausage
loukaniko : mass
meat : mass ambiguous group=beef key=meat
merguez : mass kind=sausage key=merguez
merguez sausage : mass kind=sausage key=merguez
mettwurst : mass
mexican chorizo : mass kind=chorizo proper=1
mild italian sausage : kind=sausage key=italian-sausage
mini sausage : kind=sausage key=cocktail-sausage
morcilla : mass key=black-pudding
pig in blanket = pigs in blankets : group=prepared mass
polish kielbasa : mass kind=sausage key=kielbasa proper=1
polish sausage : mass kind=sausage key=kielbasa proper=1
pork sausage = pork sausages : mass kind=sausage
pork sausage meat : mass kind=sausage key=sausage-meat
red meat : mass group=beef key=meat
rope sausage : mass kind=sausage key=smoked-sausage
sage sausage : mass kind=sausage key=breakfast-sausage
sai ua : mass kind=sausage key=sai-ua
salsiccia : mass kind=sausage
sausage = banger : kind=sausage
sausage link = link sausage : kind=sausage key=sausage-link
sausage meat = sausagemeat : mass kind=sausage key=sausage-meat
sausage mince : mass kind=sausage key=sausage-meat
sausage pattie : kind=sausage key=sausage-patty
sausage patty : kind=sausage key=sausage-patty
sausage square : mass key=lorne-sausage
saveloy : kind=sausage
smoked beef sausage : mass kind=sausage key=smoked-sausage
smoked sausage : mass kind=sausage key=smoked-sausage
soft chorizo : mass kind=chorizo key=cooking-chorizo
soy chorizo : mass kind=chorizo group=tofu key=soy-chorizo
spanish chorizo : mass key=chorizo proper=1
spicy italian sausage : kind=sausage key=italian-sausage
square sausage : mass key=lorne-sausage
sujuk = sucuk : mass
sweet italian sausage : kind=sausage key=italian-sausage
thai sausage : mass kind=sausage key=sai-ua proper=1
toulouse sausage : kind=sausage proper=1
turkey dog : kind=sausage key=turkey-dog
turkey hot dog : kind=sausage key=turkey-dog
turkey kielbasa : mass kind=sausage key=kielbasa
turkey sausage : kind=sausage key=turkey-sausage
vegan chorizo : mass kind=chorizo group=tofu key=soy-chorizo
vegan hot dog : group=tofu kind=sausage key=vegetarian-sausage
vegan sausage : group=tofu kind=sausage key=vegetarian-sausage
vegetarian sausage : group=tofu kind=sausage key=vegetarian-sausage
veggie sausage : group=tofu kind=sausage key=vegetarian-sausage
vienna sausage : kind=sausage key=frankfurter
weisswurst : kind=sausage
white pudding : mass key=white-pudding
wiener = weiner, wienie : kind=sausage

# More meat
@ FOOD noun group=pork kind=pork
haslet : mass group=cured-meat
iberico pork : mass proper=1 key=iberico-pork
pluma : mass key=iberico-pork
pork chump : key=pork-sirloin
pork flank
pork sirloin : key=pork-sirloin
pork sirloin roast : key=pork-sirloin
porterhouse pork chop : kind=chop
rib tip : kind=rib
secreto : mass key=iberico-pork
side meat : mass key=sowbelly
side pork : mass key=sowbelly
souse : mass group=offal
sowbelly = sow belly : mass key=sowbelly
@ FOOD noun group=beef kind=beef
aitchbone : mass
beef blade roast : kind=roast key=bolar-blade
beef leg
beef neck steak
beef shoulder : kind=beef key=shoulder-clod
blade roast : kind=roast key=bolar-blade
bolar blade : kind=roast key=bolar-blade
bolar roast : kind=roast key=bolar-blade
bottom sirloin : kind=steak key=club-steak
club steak : kind=steak key=club-steak
corned brisket : mass group=cured-meat
coulotte : kind=steak key=club-steak
cross-cut blade : kind=roast key=bolar-blade
delmonico steak : kind=steak key=club-steak
eye round steak : kind=steak key=club-steak
flap meat : kind=steak key=club-steak
flap steak : kind=steak key=club-steak
gravy steak : mass
knuckle of beef : mass
leg of beef : mass
merlot steak : kind=beef key=shoulder-clod
mock tender : kind=beef key=shoulder-clod
pemmican : mass group=cured-meat
petite tender : kind=beef key=shoulder-clod
ranch steak : kind=beef key=shoulder-clod
salisbury steak : kind=steak key=club-steak
shoulder clod : kind=beef key=shoulder-clod
shoulder roast : kind=beef key=shoulder-clod
sirloin flap : kind=steak key=club-steak
spider steak : kind=steak key=club-steak
teres major : kind=beef key=shoulder-clod
@ FOOD noun group=lamb kind=lamb
lamb forequarter
lamb saddle chop : kind=chop key=lamb-saddle-chop
lamb shin
lamb sirloin chop : kind=chop key=lamb-saddle-chop
mutton chop : kind=chop
