package catalogue

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// overview is the kinds once more, typed apart from the tables of data: id, cavities, what is
// twisted together and shielded, the largest current with how far it can be trusted, the sizes
// of wire from thin to thick, and whether it is outside what a sheet rates.
// source: the overview that heads the collection of kinds, which was drawn up by hand.
const overview = `
injector-high | 2 | - | 0.95 worked | 22
injector-low | 2 | - | 4 published | 20
injector-direct | 2 | pair | - | - | outside
coil-driver-3 | 3 | - | 7 published | 22/20
coil-driver-4 | 4 | - | 7 published | 22/20
coil-2 | 2 | - | 7 published | 20
crank-reluctor | 2 | pair shielded | 0.012 worked | 22
crank-hall | 3 | triple shielded | 0.015 published | 22
cam-hall | 3 | triple shielded | 0.015 published | 22
wheel-hall | 3 | triple shielded | 0.015 published | 24
wheel-active-2 | 2 | pair | 0.028 published | 24
wheel-reluctor | 2 | pair shielded | 0.012 memory | 24
knock | 2 | pair shielded | 0.001 memory | 22
temperature | 2 | - | 0.0019 worked | 22
pressure | 3 | - | 0.01 memory | 22
clutch-pressure | 3 | - | 0.01 memory | 22
throttle-pot | 3 | - | 0.0042 worked | 22
pedal | 6 | - | 0.0042 worked | 22
throttle-body | 6 | pair | 5 published | 22/20
idle-2 | 2 | - | 1.5 worked | 22
idle-3 | 3 | - | 1 memory | 22
boost-solenoid | 2 | - | 0.6 worked | 22
cam-solenoid | 2 | - | 2.4 worked | 22
lambda-wide-6 | 6 | 4 together | 1 published | 22
lambda-wide-5 | 5 | triple | 1 published | 22
lambda-narrow | 4 | pair | 2 published | 22
fuel-pump | 2 | - | 10 published | 14
water-pump | 2 | - | 8 memory | 16
water-pump-electronic | 4 | - | 25 published | 22/10
fan | 2 | - | 23 published | 10
starter-solenoid | 1 | - | 20 published | 14
starter-motor | 2 | - | 300 published | 2
alternator | 4 | - | 100 memory | 20/4
relay | 4 | - | 0.15 published | 22
isolator | 6 | - | 5 memory | 20
isolator-electronic | 6 | - | 0.5 memory | 22
fusebox-feed | 2 | - | 60 memory | 20/6
controller-feed | 3 | - | 15 memory | 22/12
can-node | 4 | pair | 0.15 published | 24
dash | 4 | pair | 0.4 published | 24/22
logger | 4 | pair | 0.5 memory | 24/22
gps | 4 | pair | 0.03 published | 24
brake-switch | 2 | - | 4 published | 20
push-button | 2 | - | 0.02 memory | 24
rotary-switch | 3 | - | 0.005 memory | 24
headlamp | 3 | - | 8.3 memory | 18
rain-lamp | 2 | - | 1.1 worked | 22
brake-lamp | 2 | - | 1.5 worked | 22
wiper | 5 | - | 6 published | 18
coil-cord | 8 | pair, pair | 0.5 memory | 24/22
push-to-talk | 2 | pair | 0.02 memory | 22
damper-pot | 3 | - | 0.005 memory | 24
gear-position | 3 | - | 0.015 memory | 22
strain-bridge | 4 | pair shielded, pair shielded | 0.0143 worked | 24
shift-cut | 3 | - | 0.02 memory | 22
thermocouple | 2 | pair shielded | - | 20
laser-ride-height | 3 | pair shielded | 0.109 worked | 24
extinguisher | 2 | pair | - | - | outside
`

// How many values of each standing the collection counts in its head: amps, limits, duties,
// peaks and sizes; the last two are of layouts.
// source: the head of the collection
var counted = map[string]int{"published": 63, "worked": 59, "practice, with a source": 50, "practice, no source": 113, "memory": 97,
	"layout published": 32, "layout practice": 20, "layout memory": 6}

func TestDevicesAgainstTheOverview(t *testing.T) {
	c := mustDefault(t)
	rows := strings.Split(strings.TrimSpace(overview), "\n")
	cavities := 0
	for _, row := range rows {
		cell := strings.Split(row, " | ")
		d, ok := c.Device(cell[0])
		if !ok {
			t.Errorf("no %s", cell[0])
			continue
		}
		n, _ := strconv.Atoi(cell[1])
		cavities += n
		if d.Cavities != n {
			t.Errorf("%s: %d cavities, want %d", d.ID, d.Cavities, n)
		}
		if got := twistedText(d); got != cell[2] {
			t.Errorf("%s: twisted %q, want %q", d.ID, got, cell[2])
		}
		if got := largestText(d); got != cell[3] {
			t.Errorf("%s: largest %q, want %q", d.ID, got, cell[3])
		}
		if got := sizesText(d); got != cell[4] {
			t.Errorf("%s: sizes %q, want %q", d.ID, got, cell[4])
		}
		if outside := len(cell) > 5; outside != (d.Outside != "") {
			t.Errorf("%s: outside %q", d.ID, d.Outside)
		}
	}
	if len(rows) != 58 || len(c.Devices) != 58 || cavities != 182 {
		t.Errorf("%d rows, %d kinds, %d cavities, want 58, 58, 182", len(rows), len(c.Devices), cavities)
	}
}

// twistedText is what is twisted together as the overview writes it.
func twistedText(d Device) string {
	var letters []string
	n, shielded := map[string]int{}, map[string]bool{}
	for _, c := range d.Carries {
		if c.Pair == "" {
			continue
		}
		if n[c.Pair]++; n[c.Pair] == 1 {
			letters = append(letters, c.Pair)
		}
		shielded[c.Pair] = c.Shield != ""
	}
	var out []string
	for _, l := range letters {
		word := map[int]string{2: "pair", 3: "triple", 4: "4 together"}[n[l]]
		if shielded[l] {
			word += " shielded"
		}
		out = append(out, word)
	}
	if len(out) == 0 {
		return "-"
	}
	return strings.Join(out, ", ")
}

func largestText(d Device) string {
	best := DeviceCavity{}
	for _, c := range d.Carries {
		if c.Amps > best.Amps {
			best = c
		}
	}
	if best.Amps == 0 {
		return "-"
	}
	word := string(best.AmpsIs.Standing)
	if best.AmpsIs.Worked {
		word = "worked"
	}
	return strconv.FormatFloat(float64(best.Amps), 'f', -1, 64) + " " + word
}

func sizesText(d Device) string {
	var sizes []int
	for _, c := range d.Carries {
		if n, ok := AWGNumber(c.Size); ok && !slices.Contains(sizes, n) {
			sizes = append(sizes, n)
		}
	}
	if len(sizes) == 0 {
		return "-"
	}
	slices.Sort(sizes)
	slices.Reverse(sizes) // thin to thick
	var out []string
	for _, n := range []int{sizes[0], sizes[len(sizes)-1]} {
		if text := strconv.Itoa(n); !slices.Contains(out, text) {
			out = append(out, text)
		}
	}
	return strings.Join(out, "/")
}

func TestStandingsOfDevices(t *testing.T) {
	c := mustDefault(t)
	got := map[string]int{}
	add := func(given bool, v Taken) {
		switch {
		case !given:
		case v.Worked:
			got["worked"]++
		case v.Standing == Practice && len(c.SourcesIn(v.From)) > 0:
			got["practice, with a source"]++
		case v.Standing == Practice:
			got["practice, no source"]++
		default:
			got[string(v.Standing)]++
		}
	}
	for _, d := range c.Devices {
		got["layout "+string(d.Layout.Standing)]++
		for _, r := range d.Carries {
			add(r.Amps > 0, r.AmpsIs)
			add(r.OnS > 0, r.DutyIs)
			add(r.PeakA > 0, r.PeakIs)
			add(r.LimitA > 0, r.LimitIs)
			add(r.Size != "", r.SizeIs)
		}
	}
	if fmt.Sprint(got) != fmt.Sprint(counted) {
		t.Errorf("%v, want %v", got, counted)
	}
}

// goodDevice is a kind as a shop writes it.
const goodDevice = `[[device]]
id          = "brake-temperature"
names       = ["brake temperature", "hub temperature"]
prefix      = ["BT", "HT"]
group       = "chassis sensors"
cavities    = 2
layout_is   = "house"
layout_from = "our own sensor, drawing B7"
carries     = [
  { cavity = "1", what = "signal", role = "signal", far = "logger", pair = "a", shield = "a", return = "2", amps = 0.02, amps_is = "worked", amps_from = "5 V / 250 ohm, B7", size = "24", size_is = "practice" },
  { cavity = "2", what = "sensor ground", role = "signal", far = "logger", pair = "a", shield = "a", size = "0.35mm2", size_is = "house", size_from = "B7" },
  { cavity = "", what = "shield drain", role = "ground", far = "logger", shield = "a" },
]
[[source]]
id       = "B7"
document = "our drawing of the hub"
place    = "sheet 2"
`

// A shop adds a kind and puts its own in the place of another; both stay in the order of a list.
func TestShopAddsAndCorrectsDevices(t *testing.T) {
	base := mustDefault(t)
	own := strings.NewReplacer(`"brake-temperature"`, `"temperature"`, `"chassis sensors"`, `"engine sensors"`).Replace(goodDevice)
	own = own[:strings.Index(own, "[[source]]")]
	c := Merge(base, mustRead(t, goodDevice+own))
	if len(c.Devices) != 59 || len(base.Devices) != 58 || len(c.Sources) != len(base.Sources)+1 {
		t.Fatalf("%d kinds, %d before, %d sources", len(c.Devices), len(base.Devices), len(c.Sources))
	}
	chassis := c.DevicesOf("chassis sensors")
	if d := chassis[len(chassis)-1]; d.ID != "brake-temperature" || d.Layout.Standing != House || d.Carries[0].Size != "24" {
		t.Errorf("%+v", d)
	}
	if d := c.DevicesOf("engine sensors")[0]; d.ID != "temperature" || d.Names[0] != "brake temperature" {
		t.Errorf("the kind of the shop does not stand where the other did: %+v", d)
	}
	if got := fmt.Sprint(c.SourcesIn("5 V / 250 ohm, B7; see A4 and B7")); got != "[our drawing of the hub: sheet 2 "+
		base.Sources["A4"].String()+"]" {
		t.Errorf("sources %s", got)
	}
	moved := Merge(base, mustRead(t, strings.Replace(own, "engine sensors", "data", 1)))
	if last := moved.DevicesOf("data"); len(moved.Devices) != 58 || last[len(last)-1].ID != "temperature" {
		t.Errorf("a kind in another group: %+v", last)
	}
	if d := fmt.Sprint(c.DeviceGroups()); d != "[injection and ignition engine sensors throttle and valves pumps and fans power chassis "+
		"sensors "+
		"driver and lamps data]" {
		t.Errorf("groups %s", d)
	}
}

// A worked value can be trusted no further than what it is worked from: amps by a published
// figure, a peak and a size by the current of their row.
func TestWorkedValuesStandAsWhatTheyAreWorkedFrom(t *testing.T) {
	c := mustDefault(t)
	for _, tt := range []struct {
		kind, cavity string
		value        func(DeviceCavity) Taken
		want         Standing
	}{
		{"injector-high", "1", func(c DeviceCavity) Taken { return c.AmpsIs }, Published}, // 13.8 V over a published resistance
		{"fuel-pump", "1", func(c DeviceCavity) Taken { return c.PeakIs }, Published},     // 6 times a published current
		{"water-pump", "1", func(c DeviceCavity) Taken { return c.PeakIs }, Memory},       // 6 times 8 A, which is memory
		{"headlamp", "2", func(c DeviceCavity) Taken { return c.PeakIs }, Memory},
		{"fusebox-feed", "in", func(c DeviceCavity) Taken { return c.SizeIs }, Memory}, // the table at 60 A, which is memory
		{"fan", "1", func(c DeviceCavity) Taken { return c.SizeIs }, Published},
	} {
		d, _ := c.Device(tt.kind)
		k := slices.IndexFunc(d.Carries, func(r DeviceCavity) bool { return r.Cavity == tt.cavity })
		if got := tt.value(d.Carries[k]); got.Standing != tt.want || !got.Worked || got.From == "" {
			t.Errorf("%s %s: %+v, want %s and worked", tt.kind, tt.cavity, got, tt.want)
		}
	}
}

// Every id of a source that a value names is there, and every source is named.
func TestSourcesOfDevices(t *testing.T) {
	c := mustDefault(t)
	named := map[string]bool{}
	look := func(where, text string) {
		for _, word := range strings.FieldsFunc(text, func(r rune) bool { return !('A' <= r && r <= 'Z' || '0' <= r && r <= '9') }) {
			_, err := strconv.Atoi(word[1:])
			if _, there := c.Sources[word]; err == nil && len(word) == 2 && word[0] >= 'A' && !there {
				t.Errorf("%s names %s, which is no source", where, word)
			}
			named[word] = true
		}
	}
	for _, d := range c.Devices {
		look(d.ID, d.Layout.From+" "+d.Note+" "+d.Outside)
		for _, r := range d.Carries {
			look(d.ID+" "+r.Cavity, strings.Join([]string{r.AmpsIs.From, r.DutyIs.From, r.PeakIs.From, r.LimitIs.From, r.SizeIs.From}, " "))
		}
	}
	var unnamed []string
	for _, id := range sortedNames(c.Sources) {
		if id[0] < 'A' || id[0] > 'Z' {
			continue // one of the other tables: TestSourcesStandOnce
		}
		if s := c.Sources[id]; s.Document == "" || s.How == "" {
			t.Errorf("%+v says too little", s)
		}
		if !named[id] {
			unnamed = append(unnamed, id)
		}
	}
	// Those of the rules for feeds that several share, and of amplified sensors in general.
	if got := strings.Join(unnamed, " "); got != "A2 I1 O5" {
		t.Errorf("named by no value: %s", got)
	}
}

func TestBrokenDevices(t *testing.T) {
	const device = `shop.toml: device "brake-temperature": `
	const drain = "one drain, and the cavities that are in it"
	for _, tt := range []struct{ name, from, to, want string }{
		{"a standing that is none", `amps_is = "worked"`, `amps_is = "certain"`,
			`shop.toml: device "brake-temperature": carries 1: amps_is: "certain" is not a standing; allowed: house, published, worked, practice, ` +
				`memory`},
		{"no standing", `amps_is = "worked", `, ``,
			`shop.toml: device "brake-temperature": carries 1: amps_is: it is missing; allowed: house, published, worked, practice, memory`},
		{"a standing of nothing", `amps = 0.02, `, ``,
			`shop.toml: device "brake-temperature": carries 1: amps_is: it says how far a value can be ` +
				`trusted that is not given; allowed: the value, or neither`},
		{"worked from nothing", `, amps_from = "5 V / 250 ohm, B7"`, ``,
			`shop.toml: device "brake-temperature": carries 1: amps_from: it is missing; allowed: where a value comes from that is worked`},
		{"a role", `role = "ground"`, `role = "earth"`,
			`shop.toml: device "brake-temperature": carries 3: role: "earth" is not one of these words; ` +
				`allowed: power, ground, signal, data`},
		{"too few cavities", `cavities    = 2`, `cavities    = 3`, device + `carries: it has 2 cavities; allowed: 3, as cavities says`},
		{"a cavity twice", `cavity = "2"`, `cavity = "1"`, device + `carries: cavity "1" is in it twice; allowed: each cavity once` + "\n" +
			device +
			`carries: cavity "1" returns by "2"; allowed: another of its cavities`},
		{"a return to itself", `return = "2"`, `return = "1"`,
			device + `carries: cavity "1" returns by "1"; allowed: another of its cavities`},
		{"a pair of one", `far = "logger", pair = "a", shield = "a", return`, `far = "logger", shield = "a", return`,
			device + `carries: 1 cavities have pair a; allowed: two, three or four that are twisted together`},
		{"a drain of no shield", `far = "logger", shield = "a" }`, `far = "logger", shield = "b" }`,
			device + `carries: shield b has 1 drains and 0 cavities; allowed: ` + drain},
		{"a drain without a shield", `far = "logger", shield = "a" }`, `far = "logger" }`,
			`shop.toml: device "brake-temperature": carries 3: shield: a ` +
				`row without a cavity is the drain of a shield, and names none; allowed: the letter of its shield`},
		{"names and prefixes", `["BT", "HT"]`, `["BT", "HT", "XT"]`,
			device + `prefix: it has 3 texts for 2 names; allowed: one for all names, or one for ` +
				`each`},
		{"a prefix with a number", `["BT", "HT"]`, `["B2"]`,
			device + `prefix: "B2" is not made of capital letters; allowed: capital letters alone, "INJ": a ` +
				`number is put behind them`},
		{"a size", `size = "24"`, `size = "thin"`,
			`shop.toml: device "brake-temperature": carries 1: size: "thin" is no size of wire; allowed: an AWG size, ` +
				`"22", or an area, "0.35mm2"`},
		{"half a duty", `amps = 0.02`, `on_s = 1.0, duty_is = "memory", amps = 0.02`,
			`shop.toml: device "brake-temperature": carries 1: on_s: it makes no duty with period_s and amps; allowed: all three, on_s shorter than ` +
				`period_s, or none`},
		{"half a peak", `amps = 0.02`, `peak_s = 1.0, amps = 0.02`,
			`shop.toml: device "brake-temperature": carries 1: peak_a: it makes no peak with peak_s; allowed: both, or neither`},
		{"an unknown key", `amps = 0.02`, `volts = 5.0, amps = 0.02`,
			`shop.toml: device "brake-temperature": carries 1: volts: unknown key; allowed: cavity, what, role, far, shield, feed, pair, return, amps, amps_from, amps_is, on_s, period_s, rest_a, duty_from, duty_is, peak_a, peak_s, peak_from, peak_is, limit_a, limit_from, limit_is, size, size_from, size_is`},
		{"not a number", `amps = 0.02`, `amps = nan`,
			`shop.toml: device "brake-temperature": carries 1: amps: nan is out of range; allowed: a number from ` +
				`0.000001 to 10000`},
		{"twice", goodDevice, goodDevice + goodDevice,
			device + `id: "brake-temperature" is in the file already; allowed: each device once` + "\n" +
				`shop.toml: source "B7": id: "B7" is in the file already; allowed: each source once`},
	} {
		t.Run(tt.name, func(t *testing.T) {
			text := strings.Replace(goodDevice, tt.from, tt.to, 1)
			if text == goodDevice {
				t.Fatal("nothing was broken")
			}
			_, err := Read(strings.NewReader(text), "shop.toml")
			if err == nil {
				t.Fatalf("was read; want %s", tt.want)
			}
			if got := numbered.ReplaceAllString(err.Error(), "shop.toml: "); got != tt.want {
				t.Errorf("\n got %s\nwant %s", got, tt.want)
			}
		})
	}
	if _, err := Read(strings.NewReader(strings.Replace(goodDevice, `amps = 0.02`, `amps = nan`, 1)), "shop.toml"); err == nil ||
		!strings.HasPrefix(err.Error(), "shop.toml:10: ") {
		t.Errorf("the line of a row is not named: %v", err)
	}
}
