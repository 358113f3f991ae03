# The still picture of a jump, to be sent or printed.

picture-invented = invented
picture-turns = turns
picture-of = of { $turns }
picture-rate = Turning rate, peak last
picture-inertia = Inertia, tightest last
picture-open-it = Opens this jump
picture-of-named = { $name }: { $turns } turns of { $owed }, { $missing }.
picture-of-free = { $name }: { $turns } turns.
