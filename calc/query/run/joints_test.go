package run_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	runquery "contralay/calc/query/run"
)

// splicedLoom is a trunk T1 from A to J, laid in three layers, and a branch T2 beyond with
// as many legs as are given: 230 ends on the splice in a layer of the trunk and goes on as
// three wires.
func splicedLoom(splice, centre, layer1 string, legs int) string {
	var b strings.Builder
	b.WriteString("format = 1\n")
	for _, id := range []string{"A", "Z", "Y"} {
		fmt.Fprintf(&b, "[[termination]]\nid = %q\ncavities = [\"1\", \"2\", \"3\", \"4\", \"5\", \"6\", \"7\", \"8\", \"9\"]\n", id)
	}
	b.WriteString("[[breakout]]\nid = \"J\"\n[[splice]]\nid = \"S\"\nat = \"J\"\n" + splice)
	wire := func(id, from, to string) {
		fmt.Fprintf(&b, "[[wire]]\nid = %q\nfrom = %q\nto = %q\nspec = \"AS22759/32\"\nsize = \"22\"\n", id, from, to)
	}
	wire("230", "A:1", "S")
	for k := 1; k <= 3; k++ {
		wire(fmt.Sprint(230+k), "S", "Z:1") // one cavity: the laying starts at A, which has more
	}
	for k := 1; k <= 6; k++ {
		wire(fmt.Sprint(100+k), fmt.Sprint("A:", k+1), fmt.Sprint("Z:", k+1))
	}
	fmt.Fprintf(&b, "[[branch]]\nid = \"T1\"\nfrom = \"A\"\nto = \"J\"\nlength_mm = 400.0\nmake = \"laid\"\n"+
		"[[branch.layer]]\nof = [%s]\n[[branch.layer]]\nof = [%s]\n", centre, layer1)
	b.WriteString("[[branch]]\nid = \"T2\"\nfrom = \"J\"\nto = \"Z\"\nlength_mm = 300.0\nmake = \"laid\"\n" +
		"[[branch.layer]]\nof = [\"101\", \"102\"]\n[[branch.layer]]\nof = [\"103\", \"104\", \"231\", \"232\", \"233\", \"105\", " +
		"\"106\"]\n")
	if legs > 1 {
		b.WriteString("[[branch]]\nid = \"L\"\nfrom = \"J\"\nto = \"Y\"\nlength_mm = 100.0\n")
	}
	return b.String()
}

// The layer laid over a splice covers it: it is made before the layer its wires lie in. At
// the centre of a fork it waits until the branch that leads there is laid.
func TestSpliceBeforeItsLayer(t *testing.T) {
	const (
		inside  = "toward = \"T1\"\noffset_mm = 60.0\n"
		beyond  = "toward = \"T2\"\noffset_mm = 60.0\n"
		middle  = `"101", "102"`
		outer   = `"230", "103", "104", "105", "106"`
		centred = `"230", "101"`
		round   = `"102", "103", "104", "105", "106"`
	)
	for name, c := range map[string]struct {
		splice, centre, layer1 string
		legs                   int
		want                   []string
	}{
		"inside the trunk, in layer 1": {inside, middle, outer, 2, []string{"lay T1 0", "join S", "lay T1 1", "lay T2 0", "lay T2 1"}},
		"inside the trunk, its centre": {inside, centred, round, 2, []string{"join S", "lay T1 0", "lay T1 1", "lay T2 0", "lay T2 1"}},
		"inside what lies beyond":      {beyond, middle, outer, 2, []string{"lay T1 0", "lay T1 1", "lay T2 0", "join S", "lay T2 1"}},
		"at the centre of a fork":      {"", centred, round, 2, []string{"lay T1 0", "lay T1 1", "join S", "lay T2 0", "lay T2 1"}},
		"at a station of its own":      {"", middle, outer, 1, []string{"lay T1 0", "join S", "lay T1 1", "lay T2 0", "lay T2 1"}},
		"toward, but not off it": {"toward = \"T1\"\n", centred, round, 2,
			[]string{"lay T1 0", "lay T1 1", "join S", "lay T2 0", "lay T2 1"}},
	} {
		var got []string
		for _, r := range runquery.Run(calctest.Built(t, splicedLoom(c.splice, c.centre, c.layer1, c.legs))) {
			if r.Kind == runquery.LayStep || r.Kind == runquery.JoinStep {
				got = append(got, r.Key)
			}
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: %v, want %v", name, got, c.want)
		}
	}
}

// A drain that ends on a splice is joined before the layer that its unit lies in.
func TestDrainSpliceBeforeItsLayer(t *testing.T) {
	text := splicedLoom("toward = \"T1\"\noffset_mm = 60.0\n", `"101"`, `"C1", "103", "104", "230", "105"`, 2)
	text = strings.Replace(text, "[[wire]]", "[[unit]]\nid = \"C1\"\nwires = [\"102\", \"106\"]\nbuild = \"pair\"\nshield = true\n"+
		"drain_to = \"S\"\n[[wire]]", 1)
	text = strings.Replace(text, "\"S\"\nspec", "\"Z:9\"\nspec", 1) // 230 passes the splice by
	steps := runquery.Run(calctest.Built(t, text))
	at := func(key string) int {
		return slices.IndexFunc(steps, func(r runquery.RunStep) bool { return r.Key == key })
	}
	if !(at("make C1") >= 0 && at("make C1") < at("lay T1 0") && at("lay T1 0") < at("join S") && at("join S") < at("lay T1 1")) {
		t.Errorf("made up %d, centre %d, joined %d, layer 1 %d", at("make C1"), at("lay T1 0"), at("join S"), at("lay T1 1"))
	}
}

// Nothing is shrunk until it has been rung out with its contacts in, and every splice is
// made once, wherever the laying starts.
func TestPinnedBeforeTheFirstShrink(t *testing.T) {
	for _, name := range calctest.Files("demo", "whole", "feeds", "example", "trunk") {
		s := calctest.Laid(t, name)
		pinned, pins, joins := -1, 0, map[string]int{}
		for k, r := range runquery.Run(s) {
			switch {
			case r.Key == runquery.HoldPinned:
				pinned = k
			case r.Kind == runquery.PinStep:
				pins++
				if pinned >= 0 {
					t.Errorf("%s: %s comes after the ring-out with contacts in", name, r.Key)
				}
			case r.Kind == runquery.ShrinkStep && pinned < 0:
				t.Errorf("%s: %s comes before the ring-out with contacts in", name, r.Key)
			case r.Kind == runquery.JoinStep:
				joins[r.Key]++
			}
		}
		if pinned < 0 || pins == 0 || len(joins) != len(s.H.Splices) {
			t.Errorf("%s: hold at %d, %d ends pinned, splices %v of %d", name, pinned, pins, joins, len(s.H.Splices))
		}
	}
}
