# Everyday verbs that are no cooking. With them a clause of chatter can be told
# from an instruction.
#
# need     brings in ingredients: "you'll need two eggs", "I've got a lemon"

# ---- to be, to have, to do -----------------------------------------------

@ VERB verb
be : s=is past=was part=been ing=being
have : s=has past=had part=had need
do : past=did part=done
become : past=became part=become
seem
appear
remain
stay
belong
exist
happen
occur : past=occurred part=occurred ing=occurring
matter
depend
vary

# ---- talk of the mind and of feeling -------------------------------------

@ VERB verb
think : past=thought part=thought
know : past=knew part=known
believe
guess
suppose
reckon
imagine
wonder
hope
wish
remember
forget : past=forgot part=forgotten ing=forgetting
recall
understand : past=understood part=understood
realise : same=realise
realize : same=realise
assume
doubt
expect
bet : past=bet part=bet ing=betting
love
like
hate
adore
enjoy
prefer : past=preferred part=preferred ing=preferring
dislike
fancy
crave
miss
admire
appreciate
dread
fear
care
mind
worry
panic : past=panicked part=panicked ing=panicking
relate
judge
swear : past=swore part=sworn
promise
admit : past=admitted part=admitted ing=admitting
confess
agree
disagree
argue
insist
deserve
impress
surprise
amaze
bore
annoy
bother
please
dream : past=dreamed part=dreamt
trust
regret : past=regretted part=regretted ing=regretting
laugh
smile
cry
giggle
joke
kid : past=kidded part=kidded ing=kidding
tease
drool
obsess
rave
moan
complain

# ---- talk to the audience ------------------------------------------------

@ VERB verb
say : past=said part=said
tell : past=told part=told
talk
speak : past=spoke part=spoken
ask
answer
call
explain
mention
describe
chat : past=chatted part=chatted ing=chatting
discuss
suggest
recommend
advise
warn
teach : past=taught part=taught
learn : past=learned part=learnt
read : past=read part=read
write : past=wrote part=written
comment
post
share
subscribe
follow
watch
click
link
join
visit
message
email
thank
welcome
greet
introduce
invite
celebrate
congratulate
apologise : same=apologise
apologize : same=apologise
sponsor
support
sign up
tune in
hit subscribe : past=hit part=hit ing=hitting
hit like : past=hit part=hit ing=hitting
leave a comment : past=left part=left
let me know : past=let part=let ing=letting
come back : past=came part=come
mean : past=meant part=meant
refer : past=referred part=referred ing=referring
quote
boast
brag
film
record
shoot : past=shot part=shot
edit
stream
present
host

# ---- life ----------------------------------------------------------------

@ VERB verb
live
grow up : past=grew part=grown
work
travel : past=travelled part=traveled ing=travelling
move house
marry
die : ing=dying
sleep : past=slept part=slept
wake up : past=woke part=woken
drive : past=drove part=driven
fly : past=flew part=flown
walk
sing : past=sang part=sung
dance
play
study
win : past=won part=won
fight : past=fought part=fought
cheat
steal : past=stole part=stolen
spend : past=spent part=spent
cost : past=cost part=cost
pay : past=paid part=paid
earn
sell : past=sold part=sold
order
phone
meet : past=met part=met
marvel : past=marvelled part=marveled ing=marvelling
inspire
inherit
invent
name
raise
eat : past=ate part=eaten
drink : past=drank part=drunk
munch
nibble
devour
gobble
starve
diet
taste like
feel like : past=felt part=felt
look like
sound like
smell like : past=smelled part=smelt

# ---- seeing, hearing, finding --------------------------------------------

@ VERB verb
see : past=saw part=seen
look
look at
look for
look out for
hear : past=heard part=heard
listen
feel : past=felt part=felt
smell : past=smelled part=smelt
sound
notice
spot
observe
find : past=found part=found
find out : past=found part=found
discover
show : past=showed part=shown
watch for
watch out
keep an eye on : past=kept part=kept
check
check on
recognise : same=recognise
recognize : same=recognise
tell apart : past=told part=told
compare
peek
peep
point
point out

# ---- needing and getting -------------------------------------------------

@ VERB verb need
need
require
call for
want
take : past=took part=taken
got : past=got part=got ing=getting
get : past=got part=got ing=getting
grab
use
use up
buy : past=bought part=bought
pick up
pop out for
start with
begin with : past=began part=begun
go with : past=went part=gone
choose : past=chose part=chosen
opt for
source
gather
collect
include
contain
consist
swap
substitute
replace
omit : past=omitted part=omitted ing=omitting
skip
leave out : past=left part=left
reach for
own
run out of : past=ran part=run ing=running

# ---- verbs before verbs --------------------------------------------------

@ VERB verb
try
go ahead
stand back : past=stood part=stood
come on : past=came part=come
start
begin : past=began part=begun
continue
carry on
keep : past=kept part=kept
keep on : past=kept part=kept
stop
finish
finish up
get going : past=got part=got ing=getting
get started : past=got part=got ing=getting
get to work : past=got part=got ing=getting
get on with : past=got part=got ing=getting
move on
crack on
head over
head back
turn to
return to
plan : past=planned part=planned ing=planning
decide
intend
aim
attempt
manage
tend
offer : past=offered part=offered ing=offering
volunteer
refuse
avoid
resist
hesitate
dare
wait for
take care : past=took part=taken
take your time : past=took part=taken
be careful : past=was part=been ing=being

@ VERB verb
make sure : past=made part=made
make certain : past=made part=made
ensure
help
allow
let : past=let part=let ing=letting
force
encourage
prevent
protect
stop it
cause
create
affect
change
turn into
improve
ruin
spoil : past=spoiled part=spoilt
waste
save
enable
mean that : past=meant part=meant
hold on : past=held part=held
hang on : past=hung part=hung
give : past=gave part=given
send : past=sent part=sent
lend : past=lent part=lent
offer up

# ---- other everyday verbs ------------------------------------------------

@ VERB verb
go : past=went part=gone
come : past=came part=come
make : past=made part=made
put : past=put part=put ing=putting
run : past=ran part=run ing=running
leave : past=left part=left
hold : past=held part=held
sit : past=sat part=sat ing=sitting
stand : past=stood part=stood
lie : past=lay part=lain ing=lying
fall : past=fell part=fallen
rise : past=rose part=risen
grow : past=grew part=grown
lose : past=lost part=lost
catch : past=caught part=caught
throw : past=threw part=thrown
carry
push
reach
touch
move
wait
last
end
open
close
shut : past=shut part=shut ing=shutting
stick : past=stuck part=stuck
fit : past=fitted part=fitted ing=fitting
suit
match
add up
count
measure
weigh
work out
figure out
sort
sort out
organise : same=organise
organize : same=organise
tidy
tidy up
fix
break : past=broke part=broken
burn : past=burned part=burnt
hurt : past=hurt part=hurt
harm
kill
survive
last for
differ
equal : past=equalled part=equalled ing=equalling
double
increase
decrease
follow on
practise : same=practise
practice : same=practise
experiment
test
repeat
rush
hurry
relax
rest
speed up : past=sped part=sped
slow down
calm down
clean up
wash up
set up : past=set part=set ing=setting
end up
turn out
come out : past=came part=come
go wrong : past=went part=gone
go right : past=went part=gone
build : past=built part=built
develop
produce
grow out : past=grew part=grown
hide : past=hid part=hidden
face
deal : past=dealt part=dealt
handle
control : past=controlled part=controlled ing=controlling
cope
struggle
fail
succeed
solve
trick
convert
translate
