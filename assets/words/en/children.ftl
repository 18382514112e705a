### The children's page. No sentence has more than twelve words.

title = For children
intro = Carry the apples up the hills. Your friend waits for you.
roads = Pick a road
done = Ridden
how =
    A hill is coming? Click easier before it starts.
    Rolling down? Click harder when your legs whirr.
    Watch the face. Keep it smiling.
    Bumpy clicks, slow legs and whirring legs make the apples hop. The hedgehog loves that.
howTitle = How it goes
learnt = What you have learnt
nothingYet = Click on the way, and your first patch waits at the end.
together = There are two of you? Change over at the gate.
wishes = If you like
voice = Say it aloud
numbers = Show numbers
beside = Outside, ride with a grown-up, and never alone on a road.
more = All other roads
