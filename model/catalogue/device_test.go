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
