package calctest

// LacksNothing is a small harness that lacks nothing: a connector of the catalogue, one of its own
// cavities, a flying lead, a splice, a unit and a feed of each kind.
const LacksNothing = `format = 1
[harness]
number = "A1"
revision = "A"
supply_v = 13.8
short_a = 400.0
[[termination]]
id = "P1"
insert = "14-18"
gender = "pin"
[[termination]]
id = "ECU"
cavities = ["1", "2", "3"]
contacts = { "20" = ["1", "2", "3"] }
[[termination]]
id = "LEAD"
[[breakout]]
id = "J1"
[[splice]]
id = "S1"
at = "J1"
[[wire]]
id = "1"
from = "P1:A"
to = "S1"
spec = "AS22759/32"
size = "20"
colour = "2"
amps = 2.0
role = "power"
[[wire]]
id = "2"
from = "S1"
to = "ECU:1"
spec = "AS22759/32"
size = "22"
colour = "2"
amps = 1.0
role = "power"
[[wire]]
id = "3"
from = "S1"
to = "LEAD:1"
spec = "AS22759/32"
size = "22"
colour = "2"
amps = 1.0
role = "power"
[[wire]]
id = "4"
from = "P1:B"
to = "ECU:2"
spec = "AS22759/32"
size = "22"
colour = "5"
amps = 0.0
role = "signal"
[[wire]]
id = "5"
from = "P1:C"
to = "ECU:3"
spec = "AS22759/32"
size = "22"
colour = "6"
role = "data"
[[unit]]
id = "U1"
wires = ["4", "5"]
[[feed]]
id = "F1"
device = "electronic"
amps = 5.0
trip_s = 0.01
wires = ["1"]
[[branch]]
id = "T1"
from = "P1"
to = "J1"
length_mm = 300.0
  [[branch.layer]]
  of = ["U1"]
  [[branch.layer]]
  of = ["1"]
  fillers = 5
  filler_mm = 1.27
[[branch]]
id = "L1"
from = "J1"
to = "ECU"
length_mm = 200.0
  [[branch.cover]]
  what = "sleeve"
  thick_mm = 0.5
[[branch]]
id = "L2"
from = "J1"
to = "LEAD"
length_mm = 100.0
`
