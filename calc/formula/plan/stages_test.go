package plan

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc/formula/lay"
)

// A made-up level says what it was asked to do, each time by so much effort.
type script struct {
	said []string
	s    *stacking
}

func (c *script) stage(name string, used, times int) stage {
	return func() (int, bool) {
		c.said = append(c.said, name)
		times--
		return used, times > 0
	}
}

// finds gives the level a plan that costs so much.
func finds(s *stacking, cost float64) {
	s.found.offer(done{label: &label{pick: pick{n: []int{1}}, crown: cost}, over: 100, cost: cost})
}

func madeUp(relaxed Relaxed) (*script, *level) {
	s, _ := setUp(Ask{Sizes: []Size{{D: 1, N: 3}}, Rules: shop}, relaxed)
	of := &tree{worth: func() float64 { return s.found.least.cost }}
	return &script{s: s}, &level{relaxed: relaxed, s: s, turn: 100, tree: of}
}

// Proving has its turn first; then a beam runs to its end, and proving has as long again as that took; so in turns until no beam is left.
func TestTurnsOfBeamAndProof(t *testing.T) {
	c, l := madeUp(Keeps)
	l.prove = c.stage("prove", 40, 1000)
	var widths []width
	l.beam = func(w width) stage {
		widths = append(widths, w)
		return c.stage(fmt.Sprint("beam", len(widths)), 30, 2)
	}
	l.first = 5000
	for range 80 {
		if used := l.better(1000); used != 40 && used != 30 {
			t.Fatalf("%d are used", used)
		}
	}
	// 100 for proving: 40, 80, 120. A beam takes 60: to 160. 160: next beam, to 220: 200, 240. To 280: 280. To 340: 320, 360. To 400: 400.
	// To 460: 440, 480. To 520: 520; after the seventh proving goes on alone.
	want := strings.Fields("prove prove prove beam1 beam1 prove beam2 beam2 prove prove beam3 beam3 prove beam4 beam4 prove " +
		"prove beam5 beam5 prove beam6 beam6 prove prove beam7 beam7")
	for len(want) < 80 {
		want = append(want, "prove")
	}
	if !slices.Equal(c.said, want) {
		t.Errorf("%v\nwant\n%v", c.said, want)
	}
	if len(widths) != 1+len(furtherOn) || !slices.Equal(widths[1:], furtherOn) {
		t.Errorf("%d beams: %+v", len(widths), widths)
	}
	if l.done {
		t.Error("it is proven while there is more to do")
	}
	l.prove = c.stage("prove", 40, 1)
	if l.better(0); !l.done {
		t.Error("nothing is left, and it is not proven")
	}
}

// The second beam is as wide as what the first took allows: 1,500,000 by that, 80 to 320; and it may take what is left of an answer at
// once,
// 340,000 less what is spent and 10,000, no less than 50,000.
func TestWidthOfTheSecondBeam(t *testing.T) {
	for _, c := range []struct{ first, spent, stacks, effort int }{
		{0, 0, 320, 330_000}, {1000, 10_000, 320, 320_000}, {10_000, 30_000, 150, 300_000}, {18_750, 280_000, 80, 50_000}, {30_000,
			279_000, 80, 51_000},
		{30_000, 900_000, 80, 50_000},
	} {
		script, l := madeUp(Keeps)
		l.proving, l.turn, l.first = 100, 100, c.first
		var got width
		l.beam = func(w width) stage { got = w; return script.stage("beam", 1, 5) }
		l.better(c.spent)
		want := secondBeam
		want.stacks, want.effort = c.stacks, c.effort
		if got != want || l.beaming == nil {
			t.Errorf("%+v: %+v", c, got)
		}
	}
}

// A level does what gives an answer at once first, one after the other; only where that finds nothing the next level does. Then the first
// level that is not proven goes on; what no plan can answer is left.
func TestStepsOfLevels(t *testing.T) {
	a, la := madeUp(Keeps)
	b, lb := madeUp(Gaps)
	var said []string
	name := func(level string, c *script, l *level, proofs int) {
		say := func(what string, used, times int, last func()) stage {
			return func() (int, bool) {
				said = append(said, level+what)
				if times--; times == 0 && last != nil {
					last()
				}
				return used, times > 0
			}
		}
		l.quick = []stage{say("quick", 1, 2, nil), say("first", 1, 1, func() {
			if level == "b" {
				finds(c.s, 7)
			}
		})}
		l.prove = say("prove", 1, proofs, nil)
	}
	name("a", a, la, 3)
	name("b", b, lb, 2)
	q := &Search{levels: []*level{la, lb}, ask: Ask{Sizes: []Size{{D: 1, N: 3}}, Rules: shop}}
	if _, ok := q.Reach(); ok || q.proven() || q.answer() != nil || q.Plans() != nil {
		t.Error("there is an answer before the first step")
	}
	for range 11 {
		if used, more := q.step(); used != 1 || !more {
			t.Fatalf("%v: %d, %v", said, used, more)
		}
		r, ok := q.Reach()
		if found := slices.Contains(said, "bfirst"); ok != found || found && (r.Relaxed != Gaps || r.Least != 7 || r.Proven != la.done ||
			r.All) ||
			q.proven() != (found && la.done) {
			t.Errorf("after %v: reach %+v, %v", said, r, ok)
		}
	}
	want := "aquick aquick afirst bquick bquick bfirst aprove aprove aprove bprove bprove"
	if got := strings.Join(said, " "); got != want {
		t.Errorf("%s\nwant\n%s", got, want)
	}
	if !la.done || !lb.done || q.answer() != lb || q.Finds() != 2 {
		t.Errorf("proven %v, %v, %d finds", la.done, lb.done, q.Finds())
	}
	lb.all = true
	if _, more := q.step(); more {
		t.Error("everything is found, and there is more to do")
	}
	if r, _ := q.Reach(); !r.All || !r.Proven {
		t.Errorf("everything is found: %+v", r)
	}
	la.done = false
	if r, _ := q.Reach(); r.All || r.Proven {
		t.Errorf("a level that leaves less may have a plan: %+v", r)
	}
	lb.tree.queue = stacks{{label: &label{}, least: 5}}
	la.done = true
	if r, _ := q.Reach(); r.Proven || r.Least != 5 {
		t.Errorf("the queue holds one of 5: %+v", r)
	}
	none := &Search{}
	if used, more := none.step(); used != 0 || more {
		t.Error("a search of nothing goes on")
	}
}

// Run spends what it is told and the piece with which it gets there, or what the first answer takes.
func TestRunSpends(t *testing.T) {
	c, l := madeUp(Keeps)
	l.quick = []stage{c.stage("quick", 30, 3), func() (int, bool) { finds(l.s, 7); return 30, false }}
	l.prove = c.stage("prove", 30, 1000)
	l.turn = 1 << 40
	q := &Search{levels: []*level{l}}
	for _, step := range []struct{ effort, spent int }{{10, 120}, {1, 150}, {30, 180}, {31, 240}, {0, 240}, {-5, 240}} {
		if !q.Run(step.effort) || q.Spent() != step.spent {
			t.Fatalf("%d more: %d are spent, want %d", step.effort, q.Spent(), step.spent)
		}
	}
	l.prove = c.stage("prove", 30, 1)
	l.all = true
	if q.Run(1000) || q.Spent() != 270 {
		t.Errorf("nothing is left: %d spent", q.Spent())
	}
}

// An answer at once ends when its effort is spent, or at the first look, of one every 4,000, more than 100,000 after that which saw the
// cheapest proven.
func TestAnswerAtOnceEnds(t *testing.T) {
	for _, c := range []struct{ proofs, want int }{{1 << 30, 340_000}, {100, 112_000}, {10, 108_000}, {80, 108_000}, {81, 112_000}} {
		_, l := madeUp(Keeps)
		finds(l.s, 7)
		l.tree.queue = stacks{{label: &label{}, least: 5}}
		l.turn = 1 << 40
		left := c.proofs
		l.prove = func() (int, bool) {
			if left--; left == 0 {
				l.tree.queue = nil
				l.tree.lost = 0
			}
			return 50, true
		}
		q := &Search{levels: []*level{l}}
		q.AtOnce()
		if q.Spent() != c.want {
			t.Errorf("proven after %d: %d spent, want %d", 50*c.proofs, q.Spent(), c.want)
		}
	}
}

// Once the cheapest is proven, plans of the same cost are looked for, and then all others: of eight of a size with three spares every
// figure that no other beats, and at the end nothing is left to do.
func TestEverythingIsFound(t *testing.T) {
	for _, a := range []Ask{
		{Sizes: []Size{{D: 1.09, N: 8}}, Spares: 3}, {Sizes: []Size{{D: 1, N: 4}, {D: 1.3, N: 3}}, Spares: 1}, {Sizes: []Size{{D: 1,
			N: 2}}},
	} {
		a.Rules, a.Centres = shop, BuiltCentres
		q := Begin(a)
		steps := 0
		for q.Run(1) {
			if steps++; steps > 2_000_000 {
				t.Fatal("it has no end")
			}
		}
		if used, more := q.step(); used != 0 || more {
			t.Errorf("%d are used when nothing is left", used)
		}
		b := newBrute(a)
		b.run()
		if got, want := lines(q.Plans()), b.front(); !slices.Equal(got, want) {
			t.Errorf("%v: got\n%q\nwant\n%q", a.Sizes, got, want)
		}
		if r, ok := q.Reach(); !ok || !r.All || !r.Proven || r.Least != q.Plans()[0].Cost {
			t.Errorf("%v: reach %+v", a.Sizes, r)
		}
		l := q.levels[0]
		if l.ties == nil || l.wide == nil || len(l.ties.queue) > 0 && l.tied < tiesEffort {
			t.Errorf("%v: not everything was looked at", a.Sizes)
		}
	}
}

// What a plan shows of each layer, laid once more by hand: of every plan of twelve questions. Spares lie outermost.
func TestShownLayers(t *testing.T) {
	spares := 0
	for _, a := range []Ask{
		{Sizes: []Size{{D: 1.09, N: 16}}, Spares: 3}, {Sizes: []Size{{D: 1.09, N: 38}}}, {Sizes: []Size{{D: 1, N: 7}, {D: 1.27, N: 6}},
			Spares: 2},
		{Sizes: []Size{{D: 1, N: 7}, {D: 1.27, N: 6}}, Spares: 2, SpareD: 1.27}, {Sizes: []Size{{D: 1, N: 8}}, Centres: BuiltCentres},
		{Sizes: []Size{{D: 1, N: 9}, {D: 2.4, N: 1}}}, {Sizes: []Size{{D: 1, N: 12}}, Held: []Held{{At: 1, Sizes: []Size{{D: 1, N: 6}},
			Locked:  true,
			Fillers: 1, FillerMM: 0.9, Lay: 55, Bind: 0.1}}},
	} {
		a.Rules = shop
		for _, p := range Make(a) {
			fillers, extra := 0, 0
			bed := lay.Bed{Crown: p.Layers[0].Over, Tape: p.Layers[0].Tape}
			for i, l := range p.Layers {
				fillers, extra = fillers+l.Fillers, extra+l.Spares
				if i == 0 {
					continue
				}
				how := lay.Laying{Ratio: 12}
				if len(a.Held) > 0 && i == 1 {
					how.Lay, how.Bind = 55, 0.1
				}
				var ds []mm
				for range l.Fillers {
					ds = append(ds, l.FillerMM)
				}
				thinnest := l.Sizes[0]
				if l.Fillers > 0 {
					thinnest = l.FillerMM
					if len(a.Held) == 0 && l.FillerMM != l.Sizes[0] {
						t.Errorf("fillers of %v beside %v", l.FillerMM, l.Sizes)
					}
				} else if l.FillerMM != 0 {
					t.Errorf("no filler, and it is %v thick", l.FillerMM)
				}
				for k, d := range l.Sizes {
					ds = append(ds, slices.Repeat([]mm{d}, l.N[k])...)
				}
				ring := lay.LayZigZag(ds, bed, how)
				if ring.Over != l.Over || ring.Tape != l.Tape || ring.Gap != l.Gap || ring.Proud != l.Proud {
					t.Errorf("layer %d: %+v, laid again %+v", i, l, ring)
				}
				room, more := 0, slices.Clone(ds)
				least := thinnest
				if len(l.Sizes) > 0 {
					least = l.Sizes[0]
				}
				for more = append(more, least); lay.Closes(more, bed, how, 0.05); more = append(more, least) {
					room++
				}
				if l.Room != max(0, room) || l.Takes != len(ds)+l.Room {
					t.Errorf("layer %d of %v: room for %d, takes %d; want %d", i, ds, l.Room, l.Takes, room)
				}
				bed = lay.Bed{Crown: l.Over, Tape: l.Tape}
			}
			if fillers != p.Fillers || extra != p.Spares || p.Over != bed.Crown {
				t.Errorf("%d fillers, %d spares, over %v in layers: %+v", fillers, extra, bed.Crown, p)
			}
			if left := p.Spares; left > 0 {
				spares++
				d := a.SpareD
				if d == 0 {
					d = a.Sizes[0].D
				}
				for i := len(p.Layers) - 1; i >= 0; i-- {
					here := min(left, countOf(p.Layers[i], d))
					if p.Layers[i].Spares != here {
						t.Errorf("layer %d holds %d spares, want %d: %+v", i, p.Layers[i].Spares, here, p)
					}
					left -= here
				}
			}
		}
	}
	if spares < 2 {
		t.Errorf("only %d plans have spares", spares)
	}
	if n := (Layer{N: []int{3, 0, 4}}).Count(); n != 7 {
		t.Errorf("%d in a layer of 3 and 4", n)
	}
	built := Plan{Fillers: 3, Layers: []Layer{{Sizes: []mm{1}, N: []int{1}, CentreMM: 1.336}}}
	if to, by := built.BuiltUp(); to != 1.336 || math.Abs(float64(by)-0.336) > 1e-12 || built.Rods() != 2 {
		t.Errorf("built up to %v by %v, %d rods", to, by, built.Rods())
	}
	for _, p := range []Plan{{Fillers: 3}, {Fillers: 3, Layers: []Layer{{Sizes: []mm{1}}}}, {Fillers: 3,
		Layers: []Layer{{CentreMM: 1.3}}}} {
		if to, by := p.BuiltUp(); to != 0 || by != 0 || p.Rods() != 3 {
			t.Errorf("%+v is built up to %v", p, to)
		}
	}
}

// What gives an answer at once tells what it spent, each time that it is asked: the first beam is what the second goes by.
func TestFirstBeamTellsItsEffort(t *testing.T) {
	l := newLevel(Ask{Sizes: []Size{{D: 1, N: 13}, {D: 1.27, N: 9}}, Rules: shop}, Keeps)
	for k, name := range []string{"the exact method", "the first beam"} {
		sum, more := 0, true
		for more {
			var used int
			if used, more = l.quick[k](); used < 1 {
				t.Fatalf("%s spends %d", name, used)
			}
			sum += used
		}
		if want := []int{0, sum}[k]; l.first != want {
			t.Errorf("after %s the first beam took %d, want %d", name, l.first, want)
		}
	}
}
