package main

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/paper/figure"
)

// unlaid is a harness as a wire list brings it: 34 x 22 and 4 x 16 and one shielded
// pair of 22 on one branch, four cavities free at either end, nothing laid.
func unlaid() string {
	var b strings.Builder
	b.WriteString("# Whole job.\nformat = 1\n\n[harness]\nname     = \"Whole job\"\nnumber   = \"JOB-1\"\nrevision = \"A\"\nsupply_v = " +
		"13.8\nunits    = \"mm\"\n")
	list := func(from, to int) string {
		var names []string
		for c := from; c <= to; c++ {
			names = append(names, strconv.Quote(strconv.Itoa(c)))
		}
		return "[" + strings.Join(names, ", ") + "]"
	}
	for _, id := range []string{"P1", "P2"} {
		// Contacts of size 20 take 24 to 20 AWG, of size 16 20 to 16 AWG.
		fmt.Fprintf(&b, "\n[[termination]]\nid       = %q\nname     = %q\ncavities = %s\ncontacts = { \"20\" = %s, \"16\" = %s }\n",
			id, "Plug "+id, list(1, 44), list(1, 40), list(41, 44))
	}
	wire := func(id, size, colour, role string, cavity int, amps float64) {
		fmt.Fprintf(&b, "\n[[wire]]\nid     = %q\nsignal = %q\nfrom   = \"P1:%d\"\nto     = \"P2:%d\"\nspec   = \"AS22759/32\"\nsize   = "+
			"%q\ncolour = %q\namps   = %.1f\nrole   = %q\n",
			id, "Signal "+id, cavity, cavity, size, colour, amps, role)
	}
	for n := 1; n <= 34; n++ {
		wire(strconv.Itoa(100+n), "22", strconv.Itoa(n%10), "power", n, 1)
	}
	for n := 1; n <= 4; n++ {
		wire(strconv.Itoa(200+n), "16", strconv.Itoa(n), "power", 40+n, 6)
	}
	wire("301", "22", "9", "signal", 35, 0.1)
	wire("302", "22", "6", "signal", 36, 0.1)
	b.WriteString("\n[[unit]]\nid     = \"C1\"\nname   = \"Sensor pair\"\nwires  = [\"301\", \"302\"]\nbuild  = \"pair\"\nshield = " +
		"true\ndrain_from = \"shell\"\ndrain_to = \"cut\"\n")
	b.WriteString("\n[[branch]]\nid        = \"T1\"\nname      = \"Trunk\"\nfrom      = \"P1\"\nto        = \"P2\"\nlength_mm = 600.0\n")
	return b.String()
}

// layUp is what the rows of the layers step say, without the sign of the row in hand.
func layUp(screen string) []string {
	var out []string
	for _, t := range strings.Split(screen, "\n") {
		t = leftPane(t)
		if layerRow.MatchString(t) {
			out = append(out, strings.TrimLeft(t, "▸> !?"))
		}
	}
	return out
}

var (
	layerRow   = regexp.MustCompile(`^[ !?][ ▸>] +(centre|\d)  +\S`)
	shelfLabel = regexp.MustCompile(`\d+/\d+ \([\d. /]+\)`)
	overLine   = regexp.MustCompile(`(?m)^ ?OD (\d+\.\d)~? \((\d+\.\d) to (\d+\.\d)\) mm`)
)

func optionRow(letter string) string { return `^[> ][ !?] [= ] ` + letter + `  ` }

// A whole job with arrows, Enter, Backspace, digits, the point and + - alone.
func TestWholeJob(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	name := fileOf(t, "job.toml", unlaid())
	before := readFile(t, name)
	s := start(t, 110, 40, nil, name)
	s.see("WIRES", "saved", "39 pieces to lay", "40 conductors")

	s.press("2.5" + enter)
	s.see("not saved", "2.5 A")
	s.press(enter)
	s.see("not measured yet")
	s.toRow("reel")
	s.press("1.12" + enter)
	s.see("1.12 mm", "measured")
	s.press(left)
	s.see("40 conductors")

	s.press(right)
	s.see("LAYERS")
	s.until("the options", func(screen string) bool { return strings.Contains(screen, " B  ") })
	s.toRow(optionRow("B"))
	s.press(enter)
	laid := layUp(s.until("option B taken", func(screen string) bool {
		_, words := hand(screen)
		return strings.Contains(words, "= B") && strings.Contains(screen, "laid as")
	}))

	s.toRow(`^>[ !?] 2  `) // the layer: a kind of change has its name behind its number
	s.press("+")
	moved := layUp(s.see("moved to"))
	if slices.Equal(moved, laid) {
		t.Errorf("a component moved out, and the layers say the same: %q", moved)
	}
	s.press(backspace)
	if back := layUp(s.see("undone")); !slices.Equal(back, laid) {
		t.Errorf("after the undo the layers say %q, before %q", back, laid)
	}

	s.press(right)
	s.see("FILL")
	if _, words := hand(s.text()); !strings.Contains(words, "spare") {
		t.Errorf("the first offer is %q, want a spare: it comes before all else", words)
	}
	s.press(enter)
	s.see("P1 3", "P2 3") // cavities that are still free

	s.press(right)
	s.see("SHEATH")
	s.settle()
	s.changed(down)
	_, tube := hand(s.settle())
	label := shelfLabel.FindString(tube)
	s.press(enter)
	s.until("the second tube taken", func(screen string) bool {
		_, words := hand(screen)
		return label != "" && strings.Contains(words, "= "+label)
	})

	s.press(right)
	s.see("BUILD")
	if readFile(t, name) != before {
		t.Fatal("the file changed before it was saved")
	}
	s.press(enter)
	screen := s.until("the save", func(screen string) bool { return !strings.Contains(screen, "not saved") })
	shown := overLine.FindStringSubmatch(screen)
	if shown == nil {
		t.Fatalf("no OD with its band on the screen:\n%s", screen)
	}
	s.press(esc)
	s.see("BRANCHES")
	s.press(esc)
	s.see("MENU")
	s.toRow("quit")
	s.press(enter)
	if code := s.ends(); code != 0 {
		t.Errorf("exit %d after a quit with all saved", code)
	}
	s.restored()

	if readFile(t, name+".bak") != before {
		t.Error("the file before the save is not beside it as .bak")
	}
	jobOnDisk(t, name, shown[1:])
}

// jobOnDisk checks the saved file: what was typed and chosen is in it, it saves
// byte-equal, and its figures are those of the screen.
func jobOnDisk(t *testing.T, name string, shown []string) {
	saved := readFile(t, name)
	d, err := file.Load(name)
	if err != nil {
		t.Fatal(err)
	}
	if again := string(file.Encode(d)); again != saved {
		t.Error("the saved file does not save byte-equal")
	}
	h := &d.Harness
	if got := h.Wires[0].Amps.V; got != 2.5 {
		t.Errorf("wire 101 carries %v A, typed 2.5", got)
	}
	if len(h.Reels) != 1 || h.Reels[0].Size != "22" || h.Reels[0].OverMM != 1.12 {
		t.Errorf("reels %v, typed 1.12 for size 22", h.Reels)
	}
	b := h.Branches[0]
	laid := map[string]int{}
	for _, l := range b.Layers {
		for _, id := range l.Of {
			laid[id]++
		}
	}
	// 34 + 4 wires, the pair and the spare that was taken.
	if len(laid) != 40 || laid["C1"] != 1 || len(h.Wires) != 41 {
		t.Errorf("%d components laid of %d wires, want 40 of 41", len(laid), len(h.Wires))
	}
	for id, n := range laid {
		if n != 1 {
			t.Errorf("%s is laid %d times", id, n)
		}
	}

	one, two := call(t, "", "figures", name), call(t, "", "figures", name)
	if one.code != 0 || one.out != two.out {
		t.Errorf("figures twice: exit %d, same bytes: %v", one.code, one.out == two.out)
	}
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	own, err := figure.All(calc.Complete(h, cat, nil))
	if err != nil || string(own) != one.out {
		t.Errorf("the figures command and a sheet worked out here differ (%v)", err)
	}

	f := figures(t, name)
	t1 := with(t, f["branches"], "id", "T1")
	for k, key := range []string{"over_mm", "over_min_mm", "over_max_mm"} {
		if got := unit.Fixed(t1[key].(float64), 1); got != shown[k] {
			t.Errorf("%s is %s in the figures, %s on the screen", key, got, shown[k])
		}
	}
	if t1["proposed"] != false {
		t.Error("the branch is laid by hand, figures call it proposed")
	}
	sheath := t1["sheath"].(object)
	if len(b.Covers) != 1 || sheath["part"] != b.Covers[0].Part.V || sheath["proposed"] != false || sheath["slides"] != true {
		t.Errorf("sheath %v in the figures, covers %v in the file", sheath, b.Covers)
	}
	totals := f["totals"].(object)
	if totals["wires"] != 41.0 || totals["units"] != 1.0 || totals["spares"] != 1.0 {
		t.Errorf("totals %v, want 41 wires, 1 unit, 1 spare", totals)
	}
	if o := call(t, "", "check", name); o.code != 0 {
		t.Errorf("check of the saved job: exit %d\n%s", o.code, o.out)
	}
}
