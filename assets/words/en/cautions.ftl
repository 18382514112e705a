### What is said before the first ride, and on everything that is taken outside.

# Twelve words are read before the bike moves for the first time; the rest is one tap away, and asked after.
title = A game teaches timing, not traffic.
outside = Before you try it outside
# Each line is a sentence of its own.
short =
    On a real bike practise on a quiet, flat, closed place first.
    Eyes on the road, not on the chain. Brakes, helmet and the law of your place come first.
    Children ride with an adult in charge.
    Pain in knees or chest: stop, and ask a doctor.
accept = Ride
more = Care
all = All of it
