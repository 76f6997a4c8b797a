package main

import (
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/shorttest"
)

// some is devices of one kind, as somebody at the board asks for them.
type some struct {
	kind    string
	lengths []int // mm, a leg each
}

// wanted is a harness to be made from an empty board.
type wanted struct {
	cavities int    // of its connector
	contacts string // their size
	trunk    int    // mm
	devices  []some
	further  int // mm to a second breakout, 0 for none
	there    []some
	spares   int
}

// lengthKeys is the keys of its lengths alone: the digits of each and Enter.
func (w wanted) lengthKeys() int {
	n := 0
	count := func(mm int) {
		if mm > 0 {
			n += len(strconv.Itoa(mm)) + 1
		}
	}
	count(w.trunk)
	count(w.further)
	for _, d := range append(append([]some{}, w.devices...), w.there...) {
		for _, mm := range d.lengths {
			count(mm)
		}
	}
	return n
}

// pick takes a row of a numbered list: by Enter where it is in hand, by arrows where that is
// shorter, else by its number.
func (c *counted) pick(what string) {
	c.t.Helper()
	row := regexp.MustCompile(`^ *(\d+) +(?:[= ] )?(.*)$`)
	screen := c.see("A number and Enter take a row")
	for !strings.Contains(screen, what) && strings.Contains(screen, "more below") {
		c.keys("+")
		screen = c.text()
	}
	at, _ := hand(screen)
	for k, line := range strings.Split(screen, "\n") {
		line = leftPane(line)
		cells := []rune(line)
		if k < 2 || len(cells) < 4 {
			continue
		}
		found := row.FindStringSubmatch(strings.TrimSpace(string(cells[3:])))
		if found == nil || !strings.HasPrefix(found[2], what) {
			continue
		}
		switch away := k - at; {
		case away >= 0 && away <= len(found[1]):
			for range away {
				c.keys(down)
			}
			c.keys(enter)
		default:
			c.typed(found[1])
		}
		return
	}
	c.t.Fatalf("no numbered row says %q:\n%s", what, screen)
}

// make makes a harness at a bench that was opened on an empty file, and saves it.
func (c *counted) make(w wanted) {
	c.t.Helper()
	c.see("An empty board")
	c.keys(enter) // a connector
	c.typed(strconv.Itoa(w.cavities))
	c.see(strconv.Itoa(w.cavities) + "x" + w.contacts)
	for _, words := hand(c.text()); !strings.HasSuffix(words, " "+strconv.Itoa(w.cavities)+"x"+w.contacts); _, words = hand(c.text()) {
		c.keys(down)
	}
	c.keys(enter)
	c.see("take it: P1")
	c.keys(enter)
	c.see("P1")
	c.keys("+")
	c.typed(strconv.Itoa(w.trunk))
	c.devices(w.devices)
	if w.further > 0 {
		c.keys("+")
		c.pick("a branch to a breakout further on")
		c.typed(strconv.Itoa(w.further))
		c.devices(w.there)
	}
	if w.spares > 0 {
		c.keys("+")
		c.pick("spare wires")
		c.typed(strconv.Itoa(w.spares))
		c.keys(enter)
	}
	c.keys("+")
	c.pick("sheaths and boots as proposed")
	c.see("taken, as proposed")
	c.keys(esc)
	c.keys(down, enter) // save
	c.see("saved")
}

// devices adds devices at the place in hand.
func (c *counted) devices(all []some) {
	c.t.Helper()
	for _, d := range all {
		c.keys("+")
		c.pick("devices")
		c.pick(groupOf(c.t, d.kind))
		c.pick(d.kind)
		if len(d.lengths) > 1 {
			c.typed(strconv.Itoa(len(d.lengths)))
		} else {
			c.keys(down)
		}
		for _, mm := range d.lengths {
			c.typed(strconv.Itoa(mm))
		}
		c.keys(enter)
		c.see("BRANCHES") // the map again
	}
}

// groupOf is the group that a kind is listed in.
func groupOf(t testing.TB, kind string) string {
	t.Helper()
	c, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	for _, g := range c.DeviceGroups() {
		for _, d := range c.DevicesOf(g) {
			if slices.Contains(d.Names, kind) {
				return g
			}
		}
	}
	t.Fatalf("no kind is called %q", kind)
	return ""
}

// empty is a file that the program wrote for a new harness.
func empty(t *testing.T) string {
	t.Helper()
	name := filepath.Join(t.TempDir(), "new.toml")
	if o := call(t, "", "new", name); o.code != ok {
		t.Fatal(o.err)
	}
	return name
}

// made opens the bench on an empty file, makes a harness there, and returns the name of its file.
func made(t *testing.T, w wanted, cols, rows, most int) string {
	t.Helper()
	name := empty(t)
	c := &counted{terminal: start(t, cols, rows, nil, name)}
	c.make(w)
	t.Logf("%d key presses, %d of them lengths; %d allowed", c.n, w.lengthKeys(), most)
	if c.n > most {
		t.Errorf("%d key presses, %d at most", c.n, most)
	}
	if keep := os.Getenv("KEEP"); keep != "" {
		text, _ := os.ReadFile(name)
		os.WriteFile(keep, text, 0o644)
	}
	if o := call(t, "", "check", name); o.code != ok {
		t.Errorf("check:\n%s%s", o.out, o.err)
	}
	return name
}

// A whole harness from nothing, with arrows, Enter, digits, + -, the point, Backspace and Esc
// alone: every figure is that of the same harness written by hand.
func TestFirstHarness(t *testing.T) {
	t.Parallel()
	w := wanted{cavities: 37, contacts: "22D", trunk: 600, spares: 3, devices: []some{
		{"fuel injector, high impedance", []int{210, 230, 250, 270}},
		{"crank sensor, variable reluctance", []int{180}},
		{"coolant temperature", []int{140, 160}},
	}}
	byHand := call(t, "", "figures", absolute(filepath.Join("testdata", "by_hand.toml")))
	for _, size := range [][2]int{{80, 24}, {120, 40}} {
		t.Run(fmt.Sprint(size[0], "x", size[1]), func(t *testing.T) {
			name := made(t, w, size[0], size[1], 90)
			if o := call(t, "", "figures", name); o.out != byHand.out || o.code != ok || byHand.code != ok {
				t.Errorf("other figures than by hand (- at the bench, + by hand):\n%s", cmp.Diff(o.out, byHand.out))
			}
		})
	}
}

// Other harnesses, drawn by seed: no path is made for one of them.
func TestOtherFirstHarnesses(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	n := 1
	if shorttest.Long() {
		n = 20
	}
	for seed := range n {
		t.Run(fmt.Sprint(seed), func(t *testing.T) {
			t.Parallel()
			w := drawn(rand.New(rand.NewPCG(20, uint64(seed))))
			t.Logf("%+v", w)
			name := made(t, w, 80, 24, (w.lengthKeys()+60)*6/5)
			d, err := file.Load(name)
			if err != nil {
				t.Fatal(err)
			}
			ends := 1 // the connector
			for _, some := range append(slices.Clone(w.devices), w.there...) {
				ends += len(some.lengths)
			}
			spares := 0
			for k := range d.Harness.Wires {
				if d.Harness.Wires[k].Role.V == model.RoleSpare {
					spares++
				}
			}
			if got := len(d.Harness.Terminations); got != ends || spares != w.spares {
				t.Errorf("%d terminations, want %d; %d spares, want %d", got, ends, spares, w.spares)
			}
			var want, got []float64
			want = append(want, float64(w.trunk))
			for _, some := range append(slices.Clone(w.devices), w.there...) {
				for _, mm := range some.lengths {
					want = append(want, float64(mm))
				}
			}
			if w.further > 0 {
				want = append(want, float64(w.further))
			}
			for k := range d.Harness.Branches {
				got = append(got, float64(d.Harness.Branches[k].LengthMM))
			}
			slices.Sort(want)
			slices.Sort(got)
			if !slices.Equal(want, got) {
				t.Errorf("lengths %v, want %v", got, want)
			}
		})
	}
}

// drawn is a harness that somebody could ask for: kinds whose wires the contacts of its connector
// take, and as many cavities as they need and some more.
func drawn(r *rand.Rand) wanted {
	type kind struct {
		name  string
		wires int // that each takes at the connector, with its drain
	}
	thin := []kind{{"fuel injector, high impedance", 2}, {"crank sensor, variable reluctance", 3}, {"cam sensor, Hall", 4},
		{"knock sensor", 3},
		{"oil temperature", 2}, {"gearbox temperature", 2}, {"fuel pressure", 3}, {"brake pressure", 3}, {"throttle position", 3},
		{"boost solenoid", 2}, {"push button", 2}, {"gear position", 3}, {"potentiometer, damper or steering", 3},
		{"idle valve, 2 wires", 2}}
	// The seals of size 20 contacts do not take 24 AWG.
	thick := append(slices.DeleteFunc(slices.Clone(thin), func(k kind) bool {
		return k.name == "push button" || strings.HasPrefix(k.name, "potentiometer")
	}), kind{"fuel injector, peak and hold", 2}, kind{"ignition coil with driver, 3 wires", 3},
		kind{"brake-light switch", 2})
	w := wanted{contacts: "22D"}
	pool, counts := thin, []int{13, 22, 37, 55, 66}
	if r.IntN(2) == 0 {
		pool, counts, w.contacts = thick, []int{10, 18, 26, 32}, "20"
	}
	mm := func(least int) int { return least + 5*r.IntN(60) }
	need := 0
	some1 := func() some {
		k := pool[r.IntN(len(pool))]
		s := some{kind: k.name}
		for range 1 + r.IntN(4) {
			if need+k.wires > counts[len(counts)-1]-4 {
				break
			}
			s.lengths = append(s.lengths, mm(90))
			need += k.wires
		}
		return s
	}
	w.trunk = mm(300)
	for range 1 + r.IntN(3) {
		if s := some1(); len(s.lengths) > 0 {
			w.devices = append(w.devices, s)
		}
	}
	if r.IntN(3) == 0 {
		w.further = mm(150)
		for len(w.there) == 0 && need < 20 {
			if s := some1(); len(s.lengths) > 0 {
				w.there = append(w.there, s)
			}
		}
		if len(w.there) == 0 {
			w.further = 0
		}
	}
	w.spares = r.IntN(4)
	for _, c := range counts {
		if c >= need+w.spares {
			w.cavities = c
			break
		}
	}
	return w
}
