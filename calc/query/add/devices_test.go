package add

import (
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// trunk is a connector with 37 cavities of size 22D, one with 32 of size 20, and a breakout.
const trunk = `format = 1
[[termination]]
id = "P1"
insert = "14-35"
[[termination]]
id = "P2"
insert = "18-32"
[[breakout]]
id = "J1"
[[branch]]
id = "T1"
from = "P1"
to = "J1"
length_mm = 600.0
[[branch]]
id = "T2"
from = "P2"
to = "J1"
length_mm = 400.0
`

// added is devices on the trunk, hung on J1 and wired to the connector that is named.
func added(t *testing.T, more string, ask DevicesAsk) (Added, *sheet.Sheet) {
	t.Helper()
	s := calctest.Built(t, trunk+more)
	if ask.At == "" {
		ask.At = "J1"
	}
	for len(ask.LengthsMM) < ask.Count {
		ask.LengthsMM = append(ask.LengthsMM, 200)
	}
	a, err := Devices(s, ask)
	if err != nil {
		t.Fatal(err)
	}
	return a, calc.Complete(a.H, s.Base, nil)
}

func wireOf(t *testing.T, h *model.Harness, id string) model.Wire {
	t.Helper()
	k := slices.IndexFunc(h.Wires, func(w model.Wire) bool { return w.ID == id })
	if k < 0 {
		t.Fatalf("there is no wire %s", id)
	}
	return h.Wires[k]
}

// says is what is told by one kind of guess about one thing.
func says(a Added, kind GuessKind, about string) string {
	var out []string
	for _, g := range a.Says {
		if g.Kind == kind && g.About == about {
			out = append(out, g.Says)
		}
	}
	return strings.Join(out, "; ")
}

func stops(s *sheet.Sheet) []string {
	var out []string
	for _, g := range s.Snags {
		if g.Level == sheet.Stop {
			out = append(out, g.Rule+" "+g.Where)
		}
	}
	return out
}

// A wire that feeds n coils of 7 A, on for 3.5 ms in every 15.
// source: the rules for feeds that several share, with their own figures: four coils 6.8 A and 7 A
// at once, eight 13.3 A and 14 A; by hand 7 · √(1 · 0.9333) = 6.76 and 7 · √(1 · 0.1333 + 4 · 0.8667) = 13.28.
func TestCoilsThatFireInTurn(t *testing.T) {
	coil := catalogue.DeviceCavity{Amps: 7, OnS: 0.0035, PeriodS: 0.015}
	for _, tt := range []struct {
		n          int
		rms, most  float64
		on, period float64 // s: x − f of period ÷ n
		rest       float64
	}{
		{1, 7 * math.Sqrt(0.0035/0.015), 7, 0.0035, 0.015, 0},
		{4, 6.8, 7, 0.0035, 0.00375, 0},
		{8, 13.3, 14, 0.001625, 0.001875, 7},
		{30, 49, 49, 0, 0, 0}, // x = 7: seven at every moment
	} {
		got := share(coil, tt.n)
		if math.Abs(float64(got.rms())-tt.rms) > 0.05 || math.Abs(float64(got.amps)-tt.most) > 1e-9 ||
			math.Abs(float64(got.onS)-tt.on) > 1e-9 || math.Abs(float64(got.periodS)-tt.period) > 1e-9 ||
			math.Abs(float64(got.rest)-tt.rest) > 1e-9 {
			t.Errorf("%d coils: %+v, RMS %.2f", tt.n, got, float64(got.rms()))
		}
	}
	// What falls together, and what is always on, adds up.
	if got := share(catalogue.DeviceCavity{Amps: 20, OnS: 5, PeriodS: 60}, 2); got.amps != 40 || got.onS != 5 || got.periodS != 60 {
		t.Errorf("two starters %+v", got)
	}
	if got := share(catalogue.DeviceCavity{Amps: 0.95}, 4); math.Abs(float64(got.amps)-3.8) > 1e-9 || got.onS != 0 {
		t.Errorf("four injectors %+v", got)
	}
}

// The least current of a moment by moment count of coils that fire evenly: another way to the same
// figure as share.
func TestInTurnCountedMomentByMoment(t *testing.T) {
	for n := 2; n <= 12; n++ {
		for _, c := range []catalogue.DeviceCavity{{Amps: 7, OnS: 0.0035, PeriodS: 0.015},
			{Amps: 4, OnS: 0.0015, PeriodS: 0.015, RestA: 1}} {
			const steps = 60000
			sum, most := 0.0, 0.0
			for k := range steps {
				now, flows := float64(c.PeriodS)*(float64(k)+0.5)/steps, 0.0
				for coil := range n {
					since := math.Mod(now-float64(c.PeriodS)*float64(coil)/float64(n)+float64(c.PeriodS), float64(c.PeriodS))
					if since < float64(c.OnS) {
						flows += float64(c.Amps)
					} else {
						flows += float64(c.RestA)
					}
				}
				sum, most = sum+flows*flows, max(most, flows)
			}
			got, want := share(c, n), math.Sqrt(sum/steps)
			if math.Abs(float64(got.rms())-want) > 0.003*want || math.Abs(float64(got.amps)-most) > 1e-6 {
				t.Errorf("%d of %v A: RMS %.3f and %.3f A at once, counted %.3f and %.3f", n, c.Amps, float64(got.rms()), float64(got.amps),
					want, most)
			}
		}
	}
}

// The size of a shared feed. source: AC 43.13-1B table 11-9, 150 C: 22 AWG 5 A, 20 7, 18 9, 16 11, 14 14, 12 19, 10 26, 8 57.
func TestSizeOfASharedFeed(t *testing.T) {
	for _, tt := range []struct {
		amps  unit.Ampere
		least string
		want  string
		bears bool
	}{
		{3.8, "22", "22", true}, {5, "22", "22", true}, {5.1, "22", "20", true}, {6.76, "20", "20", true}, {13.28, "20", "14", true},
		{0.01, "24", "24", true}, {0.01, "18", "18", true}, {26.1, "22", "8", true}, {310, "22", "4/0", true}, {311, "22", "4/0", false},
	} {
		size, _, bears := feedSize(tt.amps, tt.least)
		if size != tt.want || bears != tt.bears {
			t.Errorf("%v A, at least %s: %s %v, want %s %v", tt.amps, tt.least, size, bears, tt.want, tt.bears)
		}
	}
}

// Four coils on a connector of size 20 contacts: feed of 20 AWG with 6.76 A, grounds and triggers
// of their own.
func TestCoilsWithASplicedFeed(t *testing.T) {
	a, s := added(t, "", DevicesAsk{Kind: "coil-driver-3", Count: 4, Controller: "P2"})
	if got := stops(s); len(got) > 0 {
		t.Errorf("%v", got)
	}
	feed := wireOf(t, a.H, "101")
	if feed.Size != "20" || feed.Amps.V != 7 || feed.OnS.V != 0.0035 || feed.PeriodS.V != 0.00375 || feed.From.V != "P2:A" ||
		feed.To.V != "S1" {
		t.Errorf("%+v", feed)
	}
	calctest.Near(t, "what heats the feed", float64(s.Wires[s.Index.Wire["101"]].Heats), 6.76, 0.01)
	if w := wireOf(t, a.H, "102"); w.From.V != "S1" || w.To.V != "COIL1:A" || w.Return.V != "103" || w.OnS.V != 0.0035 ||
		w.PeriodS.V != 0.015 {
		t.Errorf("%+v", w)
	}
	if w := wireOf(t, a.H, "104"); w.Return.Set || w.Size != "22" || w.Role.V != model.RoleSignal || w.OnS.Set {
		t.Errorf("%+v", w)
	}
	if got := says(a, Chosen, "from"); !strings.Contains(got,
		"103, 106, 109, 112: the other end is put into P2. With this kind it goes to: "+
			"engine star point") {
		t.Errorf("%q", got)
	}
	if got := says(a, Ask, "ask"); got != "Such devices differ. Ask for the coil's peak current and dwell" {
		t.Errorf("%q", got)
	}
}

// A contact of size 22D takes 22 AWG at most: what is thicker has its device end alone, and it is
// told how many cavities there are and how many are needed.
func TestNoRoomForThickWires(t *testing.T) {
	a, s := added(t, "", DevicesAsk{Kind: "coil-driver-3", Count: 4, Controller: "P1", Feed: FeedEach})
	if got := says(a, Missing, "cavity"); got != "P1 has 0 free cavities that take 20 AWG, and 8 are needed: 8 wires end nowhere yet" {
		t.Errorf("%q", got)
	}
	if w := wireOf(t, a.H, "101"); w.From.Set || w.To.V != "COIL1:A" {
		t.Errorf("%+v", w)
	}
	if w := wireOf(t, a.H, "103"); w.From.V != "P1:1" {
		t.Errorf("%+v", w)
	}
	if got := stops(s); len(got) != 8 || got[0] != "wire.path 101" {
		t.Errorf("%v", got)
	}
}

// The connector has four cavities left, three of them side by side: a pair with its drain takes those,
// and the next pair none, because it is not parted.
func TestTheLastCavities(t *testing.T) {
	var reserved []string
	for k := 1; k <= 34; k++ {
		if k != 7 {
			reserved = append(reserved, `"`+unit.Fixed(float64(k), 0)+`"`)
		}
	}
	more := strings.Replace(trunk, "insert = \"14-35\"\n", "insert = \"14-35\"\nreserved = ["+strings.Join(reserved, ", ")+"]\n", 1)
	s := calctest.Built(t, more) // 7, 35, 36 and 37 are free
	a, err := Devices(s, DevicesAsk{Kind: "crank-reluctor", Count: 2, At: "J1", Controller: "P1", LengthsMM: []unit.Millimetre{100, 120}})
	if err != nil {
		t.Fatal(err)
	}
	if w, u := wireOf(t, a.H, "101"), a.H.Units[0]; w.From.V != "P1:35" || u.DrainFrom.V != "P1:37" || u.DrainTo.V != "cut" {
		t.Errorf("%+v %+v: neighbours are taken before what lies alone", w, u)
	}
	if w, u := wireOf(t, a.H, "103"), a.H.Units[1]; w.From.Set || u.DrainFrom.Set || u.DrainTo.V != "cut" {
		t.Errorf("%+v %+v", w, u)
	}
	if got := says(a, Missing, "cavity"); got != "P1 has 4 free cavities that take 22 AWG, and 5 are needed: 2 wires end nowhere yet" {
		t.Errorf("%q", got)
	}
}

// Cavities of one device are never joined: each row of a feed has a splice of its own. What is
// twisted with other wires has none.
func TestSplicesJoinTheSameCavity(t *testing.T) {
	a, s := added(t, "", DevicesAsk{Kind: "headlamp", Count: 2, Controller: "P2"})
	if len(a.Splices) != 2 || len(a.Wires) != 8 || len(s.Splices[0].Wires) != 3 || len(s.Splices[1].Wires) != 3 {
		t.Errorf("%v %v", a.Splices, a.Wires)
	}
	if low, high := wireOf(t, a.H, "101"), wireOf(t, a.H, "102"); low.Amps.V != 8 || high.Amps.V != 8.6 ||
		low.Signal.V != "Lamps feed, low beam" {
		t.Errorf("%+v %+v", low, high)
	}
	a, s = added(t, "", DevicesAsk{Kind: "crank-hall", Count: 2, Controller: "P1"})
	if got := stops(s); len(got) > 0 || len(a.Splices) > 0 || len(a.Units) != 2 || a.H.Units[0].Build.V != model.BuildTriple {
		t.Errorf("%v: %v %+v", got, a.Splices, a.H.Units)
	}
	if got := says(a, Chosen, "splice"); !strings.Contains(got, "each has a feed of its own, without a splice") {
		t.Errorf("%q", got)
	}
	if got := wireOf(t, a.H, "103"); got.From.V != "P1:3" || a.H.Units[0].DrainFrom.V != "P1:4" || wireOf(t, a.H, "104").From.V != "P1:5" {
		t.Errorf("%+v %+v", got, a.H.Units)
	}
}

// Two pairs in one shield are a unit that is twisted as a whole, and it is told.
func TestTwoPairsInOneShield(t *testing.T) {
	a, s := added(t, "", DevicesAsk{Kind: "strain-bridge", Count: 1, Controller: "P1"})
	if got := stops(s); len(got) > 0 || len(a.H.Units) != 1 || a.H.Units[0].Build.V != model.BuildQuad || len(a.H.Units[0].Wires) != 4 {
		t.Errorf("%v %+v", got, a.H.Units)
	}
	if got := says(a, Chosen, "build"); !strings.Contains(got, "it is made as a quad") {
		t.Errorf("%q", got)
	}
	a, s = added(t, "", DevicesAsk{Kind: "coil-cord", Count: 1, Controller: "P1"})
	if got := stops(s); len(got) > 0 || len(a.H.Units) != 2 {
		t.Errorf("%v %+v", got, a.H.Units)
	}
}

// What is outside gets cavities and wires and no current; what life hangs on stops the sheet.
func TestOutsideWhatTheSheetRates(t *testing.T) {
	a, s := added(t, "", DevicesAsk{Kind: "injector-direct", Count: 2, Controller: "P1"})
	for _, id := range a.Wires {
		if w := wireOf(t, a.H, id); w.Amps.Set || w.Safety.Set || w.Size != "22" {
			t.Errorf("%+v", w)
		}
	}
	if got := says(a, Outside, "outside"); got != "Outside what the sheet rates: above 60 V; peak 15 A, hold 5 A (I6). No current is "+
		"entered" {
		t.Errorf("%q", got)
	}
	if got := says(a, Missing, "size"); !strings.Contains(got, "no size is known (left to the driver's maker)") {
		t.Errorf("%q", got)
	}
	if got := stops(s); len(got) > 0 {
		t.Errorf("%v", got)
	}
	_, s = added(t, "", DevicesAsk{Kind: "extinguisher", Count: 1, Controller: "P1"})
	if got := stops(s); len(got) != 2 || got[0] != "wire.safety 101" {
		t.Errorf("%v", got)
	}
}

// No connector: each wire has its device's end alone, and it is told where the other goes.
func TestWithoutAConnector(t *testing.T) {
	a, s := added(t, "", DevicesAsk{Kind: "injector-high", Count: 2})
	if w := wireOf(t, a.H, "101"); w.From.Set || w.To.V != "S1" || w.Amps.V != 1.9 {
		t.Errorf("%+v", w)
	}
	got := says(a, Missing, "from")
	if !strings.Contains(got, "103, 105: no connector is given for the other end, which goes to: controller") ||
		!strings.Contains(got, "101: no connector is given for the other end, which goes to: feed") {
		t.Errorf("%q", got)
	}
	if len(stops(s)) != 3 {
		t.Errorf("%v", stops(s))
	}
	s = calctest.Built(t, trunk)
	a, err := Devices(s, DevicesAsk{Kind: "injector-high", Count: 2, Controller: "P1"})
	if err != nil || len(a.Branches) > 0 || len(a.Splices) > 0 || says(a, Missing, "branch") == "" || says(a, Missing, "splice") == "" {
		t.Errorf("%v %+v", err, a.Says)
	}
}

// Other ends by the word of the kind. A unit of which the wires part is not made up.
func TestOtherEnds(t *testing.T) {
	a, s := added(t, "", DevicesAsk{Kind: "coil-driver-3", Count: 2, Controller: "P1", Feed: FeedEach,
		Ends: map[string]string{"engine star point": "P2", "feed": "P2"}})
	if got := stops(s); len(got) > 0 {
		t.Errorf("%v", got)
	}
	if f, g, c := wireOf(t, a.H, "101"), wireOf(t, a.H, "102"), wireOf(t, a.H, "103"); f.From.V != "P2:A" || g.From.V != "P2:B" ||
		c.From.V != "P1:1" {
		t.Errorf("%v %v %v", f.From, g.From, c.From)
	}
	a, s = added(t, "", DevicesAsk{Kind: "laser-ride-height", Count: 1, Controller: "P1", Size: "22",
		Ends: map[string]string{"logger": "P2"}})
	if got := stops(s); len(got) > 0 || len(a.Units) > 0 || !strings.Contains(says(a, Missing, "unit"), "go to different places") {
		t.Errorf("%v %v %q", got, a.Units, says(a, Missing, "unit"))
	}
}

// Names and ids go on where the harness has some already.
func TestNamesGoOn(t *testing.T) {
	a, _ := added(t, "", DevicesAsk{Kind: "crank-reluctor", Count: 1, Name: "cam sensor, variable reluctance", Controller: "P1"})
	if term := a.H.Terminations[2]; term.ID != "CAM1" || term.Name.V != "Cam sensor" || term.Device.V != "cam sensor, variable reluctance" {
		t.Errorf("%+v", term)
	}
	s := calc.Build(a.H, calctest.Catalogue(t), nil)
	b, err := Devices(s, DevicesAsk{Kind: "cam-hall", Count: 2, At: "J1", Controller: "P1", LengthsMM: []unit.Millimetre{90, 90}})
	if err != nil || strings.Join(b.Terminations, " ") != "CAM2 CAM3" || b.H.Terminations[3].Name.V != "Cam sensor 2" ||
		b.Wires[0] != "103" ||
		b.Units[0] != "C2" || b.Branches[0] != "L2" {
		t.Errorf("%v %+v", err, b)
	}
}

// Sizes that a specification has not: the next thicker, or another specification; told each time.
func TestSizesOfOtherSpecifications(t *testing.T) {
	s := calctest.Built(t, trunk)
	m := newMaker(s)
	for _, tt := range []struct{ spec, size, wantSpec, wantSize, says string }{
		{"AS22759/32", "22", "AS22759/32", "22", ""},
		{"ISO 6722 thin", "22", "ISO 6722 thin", "0.35mm2", "ISO 6722 thin has no 22 AWG: the next thicker, 0.35 mm2, is taken"},
		{"SAE J1128 TXL", "0.5mm2", "SAE J1128 TXL", "20", "SAE J1128 TXL has no 0.5 mm2: the next thicker, 20 AWG, is taken"},
		{"AS22759/32", "2", "AS22759/34", "2", "AS22759/32 has no 2 AWG: AS22759/34 is taken"},
		{"own", "22", "own", "22", "no catalogue has own: its diameter and its copper are not known"},
	} {
		if got := m.made(tt.spec, tt.size); got != (wireSize{tt.wantSpec, tt.wantSize, tt.says}) {
			t.Errorf("%s %s: %+v", tt.spec, tt.size, got)
		}
	}
	a, _ := added(t, "", DevicesAsk{Kind: "starter-motor", Count: 1, Controller: "P2"})
	if got := says(a, Chosen, "spec"); got != "101, 102: AS22759/32 has no 2 AWG: AS22759/34 is taken" {
		t.Errorf("%q", got)
	}
	a, _ = added(t, "", DevicesAsk{Kind: "injector-high", Count: 6, Controller: "P1", Size: "24"})
	if got := says(a, Missing, "size"); got != "101 carries an RMS current of 5.7 A: 24 AWG is too thin for it in a full bundle" {
		t.Errorf("%q", got)
	}
}

// A trunk that is laid in the file takes what comes later: into the room of its outermost layer, and
// what is left into a layer of its own.
func TestIntoATrunkThatIsLaid(t *testing.T) {
	s := bench(t)
	s = laidOut(calc.Complete(s.H, s.Base, s))
	was := len(s.H.Branches[0].Layers)
	a, err := Devices(s, DevicesAsk{Kind: "pressure", Count: 3, At: "J1", Controller: "P1", Feed: FeedEach,
		LengthsMM: []unit.Millimetre{100, 110, 120}})
	if err != nil {
		t.Fatal(err)
	}
	after := calc.Complete(a.H, s.Base, nil)
	if got := stops(after); len(got) > 0 {
		t.Errorf("%v", got)
	}
	if n := len(a.H.Branches[0].Layers); n < was || len(s.H.Branches[0].Layers) != was || says(a, Chosen, "layer") == "" {
		t.Errorf("%d layers, %d before: %q", n, was, says(a, Chosen, "layer"))
	}
	u, err := Devices(s, DevicesAsk{Kind: "crank-hall", Count: 1, At: "J1", Controller: "P1", LengthsMM: []unit.Millimetre{100}})
	if err != nil {
		t.Fatal(err)
	}
	if got := stops(calc.Complete(u.H, s.Base, nil)); len(got) > 0 ||
		!strings.Contains(says(u, Chosen, "layer"), "T1 is laid already: C2 ") {
		t.Errorf("%v %q", got, says(u, Chosen, "layer"))
	}
	locked := s.H.EditBranch(0, func(b *model.Branch) { b.Layers[was-1].Locked = model.Some(true) })
	b, err := Devices(calc.Build(locked, s.Base, nil), DevicesAsk{Kind: "temperature", Count: 1, At: "J1", Controller: "P1",
		LengthsMM: []unit.Millimetre{100}})
	if layers := b.H.Branches[0].Layers; err != nil || len(layers) != was+1 || strings.Join(layers[was].Of, " ") != "119 120" ||
		len(layers[was-1].Of) != len(s.H.Branches[0].Layers[was-1].Of) {
		t.Errorf("%v %+v", err, layers)
	}
}

// laidOut is a sheet with its proposals written into the harness.
func laidOut(s *sheet.Sheet) *sheet.Sheet { return laid(s) }

func TestDevicesThatCannotBeMade(t *testing.T) {
	s := calctest.Built(t, trunk)
	good := DevicesAsk{Kind: "injector-high", Count: 2, At: "J1", Controller: "P1"}
	for _, tt := range []struct {
		name  string
		spoil func(*DevicesAsk)
		want  string
	}{
		{"a kind", func(a *DevicesAsk) { a.Kind = "rocket" },
			`the catalogue has no device kind "rocket"; allowed: injector-high, coil-driver-3, `},
		{"a name", func(a *DevicesAsk) { a.Name = "glow plug" },
			`injector-high is not called "glow plug"; allowed: fuel injector, high impedance`},
		{"none", func(a *DevicesAsk) { a.Count = 0 }, `0 devices cannot be added at once; allowed: 1 to 100`},
		{"too many", func(a *DevicesAsk) { a.Count = 101 }, `101 devices cannot be added at once; allowed: 1 to 100`},
		{"lengths", func(a *DevicesAsk) { a.LengthsMM = []unit.Millimetre{1, 2, 3} },
			`there are 3 lengths for 2 devices; allowed: one for each`},
		{"no length", func(a *DevicesAsk) { a.LengthsMM = []unit.Millimetre{unit.Millimetre(math.NaN())} },
			`a leg cannot be NaN mm long; allowed: more than 0, or 0 where it is not measured yet`},
		{"a place", func(a *DevicesAsk) { a.At = "J9" },
			`there is no breakout "J9" to hang legs on, and no termination either; allowed: J1`},
		{"a connector", func(a *DevicesAsk) { a.Controller = "P9" }, `there is no termination "P9"; allowed: P1, P2`},
		{"another end", func(a *DevicesAsk) { a.Ends = map[string]string{"feed": "P9"} }, `there is no termination "P9"; allowed: P1, P2`},
		{"a way to feed", func(a *DevicesAsk) { a.Feed = "ring" }, `"ring" is no way to feed them; allowed: splice, each`},
		{"a boot", func(a *DevicesAsk) { a.Boot = "sock" }, `the catalogue has no boot "sock"; allowed: boot-45-8, `},
	} {
		ask := good
		tt.spoil(&ask)
		a, err := Devices(s, ask)
		if err == nil || !strings.HasPrefix(err.Error(), tt.want) || a.H != s.H || len(a.Wires) > 0 {
			t.Errorf("%s: %v, want %s", tt.name, err, tt.want)
		}
	}
}

// A boot that is asked for, a leg that is not measured, and contacts that a shop's kind knows.
func TestBootsLengthsAndContacts(t *testing.T) {
	s := calctest.Built(t, trunk)
	cat := catalogue.Merge(s.Base, nil)
	k := slices.IndexFunc(cat.Devices, func(d catalogue.Device) bool { return d.ID == "temperature" })
	cat.Devices = slices.Clone(cat.Devices)
	cat.Devices[k].Contact = "20"
	s = calc.Build(s.H, cat, nil)
	a, err := Devices(s, DevicesAsk{Kind: "temperature", Count: 3, At: "J1", Controller: "P1", Boot: "boot-straight-8",
		LengthsMM: []unit.Millimetre{150}})
	if err != nil {
		t.Fatal(err)
	}
	if e := a.H.Terminations[2]; e.Boot.V != "boot-straight-8" || e.Datum.V != model.DatumBootLip ||
		strings.Join(e.Contacts["20"], " ") != "1 2" {
		t.Errorf("%+v", e)
	}
	if got := says(a, Missing, "length_mm"); got != "L2, L3: not measured yet" || a.H.Branches[2].LengthMM != 150 ||
		a.H.Branches[3].LengthMM != 0 {
		t.Errorf("%q %+v", got, a.H.Branches)
	}
	if got := says(a, Missing, "contacts"); got != "" {
		t.Errorf("%q", got)
	}
}

// Every value that is told has its standing and names its sources.
func TestStandingsAreTold(t *testing.T) {
	a, _ := added(t, "", DevicesAsk{Kind: "fuel-pump", Count: 1, Controller: "P2"})
	for about, want := range map[string]catalogue.Standing{"amps": catalogue.Published, "size": catalogue.Practice,
		"peak":     catalogue.Published,
		"cavities": catalogue.Practice} {
		k := slices.IndexFunc(a.Says, func(g Guess) bool { return g.About == about })
		if k < 0 || a.Says[k].Standing != want {
			t.Fatalf("%s: %+v, want %s", about, a.Says, want)
		}
		if g := a.Says[k]; about == "peak" && (!g.Worked || len(g.Source) != 1 || g.Source[0].ID != "G2") {
			t.Errorf("%+v", g)
		}
	}
	if got := says(a, Chosen, "amps"); got != "101, 102: 10 A" {
		t.Errorf("%q", got)
	}
}

// Every kind, one and three of it, on a connector whose contacts are not known: nothing stops the
// sheet but what life hangs on, and no splice is made that no part joins.
func TestEveryKindCanBeBuilt(t *testing.T) {
	cat := calctest.Catalogue(t)
	for _, kind := range cat.Devices {
		for _, n := range []int{1, 3} {
			s := calc.Build(&model.Harness{}, cat, nil)
			a, err := Connector(s, ConnectorAsk{Cavities: 60})
			if err != nil {
				t.Fatal(err)
			}
			h := *a.H
			h.Breakouts = []model.Breakout{{ID: "J1"}}
			h.Branches = []model.Branch{{ID: "T1", From: "P1", To: "J1", LengthMM: 600}}
			s = calc.Build(&h, cat, nil)
			a, err = Devices(s, DevicesAsk{Kind: kind.ID, Count: n, At: "J1", Controller: "P1",
				LengthsMM: []unit.Millimetre{200, 220, 240}[:n]})
			if err != nil {
				t.Fatal(err)
			}
			for _, g := range calc.Complete(a.H, cat, nil).Snags {
				if g.Level == sheet.Stop && !(g.Rule == "wire.safety" && kind.ID == "extinguisher") || g.Rule == "splice.barrel" {
					t.Errorf("%d %s: %+v", n, kind.ID, g)
				}
			}
		}
	}
}

// Where no splice joins the wires each device has its own feed. Three fans: 69 A, for which the table
// has 6 AWG (76 A). Injectors of 0.95 A: 8.55 A for nine, which is 18 AWG (9 A), and 11.4 A for twelve,
// 14 AWG (14 A). By strands 22 AWG is 19 × 6.3² = 754 circular mils and 18 AWG 19 × 10² = 1900; the
// largest butt splice takes 1900 to 6755 on each side, and 1 % more for the stranding, 6823: nine of
// 754 are 6786, ten 7540.
func TestNoSpliceForTheWires(t *testing.T) {
	a, _ := added(t, "", DevicesAsk{Kind: "fan", Count: 3})
	if got := says(a, Chosen, "splice"); len(a.Splices) > 0 ||
		got != "No splice of the catalogue joins 6 AWG with 3 of 10 AWG: each device has a feed of its own" {
		t.Errorf("%v %q", a.Splices, got)
	}
	a, _ = added(t, "", DevicesAsk{Kind: "injector-high", Count: 12})
	if got := says(a, Chosen, "splice"); len(a.Splices) > 0 ||
		got != "No splice of the catalogue joins 14 AWG with 12 of 22 AWG: each device has a feed of its own. Up to 9 at a time have a "+
			"splice" {
		t.Errorf("%v %q", a.Splices, got)
	}
	a, _ = added(t, "", DevicesAsk{Kind: "injector-high", Count: 9})
	if w := wireOf(t, a.H, "101"); len(a.Splices) != 1 || w.Size != "18" {
		t.Errorf("%v %+v", a.Splices, w)
	}
}
