package over

import (
	"fmt"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// told is what a sheet says, each as level, rule, place and words.
func told(s *sheet.Sheet) []string {
	var out []string
	for _, g := range s.Snags {
		out = append(out, g.Level.String()+" "+g.Rule+" "+g.Where+" "+g.Says)
	}
	return out
}

// What is said of a boot's cable end on a bare branch of 10 mm, 9.5 to 10.5, by hand from the rules: it stops where it recovers to more
// than 9.5 or opens to less than 10.5, and is at most a warning where its size is from memory; it wants 1.10 times its recovered bore
// (10 / 9.2 = 1.09) and at most 80 % of its bore filled (10 / 12.4 = 81 %), which is said of no size from memory.
func TestWhatIsSaidOfABoot(t *testing.T) {
	const typeIt, check = ". The boot's size is a placeholder: type it off the part", "check the part's sheet"
	grip := func(rec, end string) string {
		return " boot.grip A B stays loose: it recovers to " + rec + " mm and lies on 9.50 mm with every wire at its smallest. Build the " +
			"bundle up there" + end
	}
	slide := func(sup, end string) string {
		return " boot.slide A B will not slide on: it opens to " + sup +
			" mm and the branch is 10.50 mm with every wire at its largest" + end
	}
	for _, c := range []struct {
		name          string
		rec, supplied unit.Millimetre
		standing      catalogue.Standing
		read          catalogue.BootRead
		want          string
	}{
		{"all well", 9, 12.5, catalogue.Published, catalogue.BootRead{}, ""},
		{"just held, just open", 9.5, 10.5, catalogue.Memory, catalogue.BootRead{}, ""},
		{"loose", 9.51, 30, catalogue.Published, catalogue.BootRead{}, "stop" + grip("9.51", ", and "+check)},
		{"loose by a size from memory", 9.51, 30, catalogue.Memory, catalogue.BootRead{}, "warn" + grip("9.51", typeIt)},
		{"loose by a size read off it", 9.51, 30, catalogue.Memory, catalogue.BootRead{CableRecovered: true},
			"stop" + grip("9.51", ", and "+check)},
		{"too small", 5, 10.49, catalogue.Practice, catalogue.BootRead{}, "stop" + slide("10.49", ". Check the part's sheet")},
		{"too small by a size from memory", 5, 10.49, catalogue.Memory, catalogue.BootRead{CableRecovered: true},
			"warn" + slide("10.49", typeIt)},
		{"too small by a size read off it", 5, 10.49, catalogue.Memory, catalogue.BootRead{CableSupplied: true},
			"stop" + slide("10.49", ". Check the part's sheet")},
		{"opens to what is not known", 5, 0, catalogue.Published, catalogue.BootRead{}, ""},
		{"grips little", 9.2, 30, catalogue.Published, catalogue.BootRead{},
			"note boot.gripslittle A B grips little: what it lies on is 1.09 times its recovered bore; 1.10 is wanted"},
		{"grips little from memory", 9.2, 30, catalogue.Memory, catalogue.BootRead{CableSupplied: true}, ""},
		{"filled", 5, 12.4, catalogue.House, catalogue.BootRead{},
			"note boot.filled A B is filled to 81 % of its bore; at most 80 % is advised"},
		{"filled from memory", 5, 12.4, catalogue.Memory, catalogue.BootRead{CableRecovered: true}, ""},
	} {
		s := oneBranch(func(s *sheet.Sheet) {
			s.H.Terminations[0].Boot = model.Some("B")
			s.Cat.Boots = map[string]catalogue.Boot{"B": {ID: "B", LengthMM: 50, CableRecoveredMM: c.rec, CableSuppliedMM: c.supplied,
				Read: c.read, Origin: catalogue.Origin{Standing: c.standing}}}
		})
		boots(s, 0)
		want := "[" + c.want + "]"
		if got := fmt.Sprint(told(s)); got != want {
			t.Errorf("%s:\n%s, want\n%s", c.name, got, want)
		}
	}
}

// When a boot is not judged: where the branch has no length or no diameter, or its sheath stops. One that no catalogue has, and one for
// another shell than the insert's, are said all the same.
func TestWhenABootIsNotJudged(t *testing.T) {
	const shell = "warn boot.shell A B fits shell 8, but the insert has shell 10"
	for _, c := range []struct {
		name   string
		change func(s *sheet.Sheet)
		want   string
	}{
		{"judged", func(s *sheet.Sheet) {}, "[" + shell + "]+1"},
		{"no length", func(s *sheet.Sheet) { s.H.Branches[0].LengthMM = 0 }, "[" + shell + "]"},
		{"no diameter", func(s *sheet.Sheet) { s.Branches[0].OverMM = 0 }, "[" + shell + "]"},
		{"its sheath stops", func(s *sheet.Sheet) {
			s.Branches[0].Sheath.Tube, s.Branches[0].Sheath.Verdict.StopLoose = model.Some(catalogue.Tube{ID: "X"}), true
		}, "[" + shell + "]"},
		{"of the insert's shell", func(s *sheet.Sheet) { s.Cat.Inserts["I"] = catalogue.Insert{Shell: 8} }, "[]+1"},
		{"shell not known", func(s *sheet.Sheet) { s.Cat.Inserts["I"] = catalogue.Insert{} }, "[]+1"},
		{"insert not known", func(s *sheet.Sheet) { s.H.Terminations[0].Insert.V = "J" }, "[]+1"},
		{"in no catalogue", func(s *sheet.Sheet) { s.H.Terminations[0].Boot.V = "C" }, "[warn boot.part A Boot \"C\" is in no catalogue]"},
		{"no boot", func(s *sheet.Sheet) { s.H.Terminations[0].Boot.V = "" }, "[]"},
	} {
		s := oneBranch(func(s *sheet.Sheet) {
			s.H.Terminations[0].Boot, s.H.Terminations[0].Insert = model.Some("B"), model.Some("I")
			s.Cat.Inserts = map[string]catalogue.Insert{"I": {Shell: 10}}
			s.Cat.Boots = map[string]catalogue.Boot{"B": {ID: "B", Shell: 8, LengthMM: 50, CableRecoveredMM: 20, CableSuppliedMM: 30}}
			c.change(s)
		})
		boots(s, 0)
		var got []string
		grips := ""
		for n, g := range s.Snags {
			if g.Rule == "boot.grip" {
				grips = "+1"
			} else {
				got = append(got, told(s)[n])
			}
		}
		if fmt.Sprint(got)+grips != c.want {
			t.Errorf("%s: %v%s, want %s", c.name, got, grips, c.want)
		}
	}
}

// A shield grounded at both ends is told; one cut or not said at an end, and a unit without a shield, is not.
func TestAShieldGroundedAtBothEnds(t *testing.T) {
	for _, c := range []struct {
		from, to string
		shield   bool
		want     string
	}{
		{"A.1", "shell", true, "[note shield.both U Its shield is grounded at both ends, A.1 and shell: that is right only if you want " +
			"the ground loop]"},
		{"A.1", "cut", true, "[]"}, {"cut", "shell", true, "[]"}, {"", "shell", true, "[]"}, {"A.1", "", true, "[]"},
		{"A.1", "shell", false, "[]"},
	} {
		s := oneBranch(func(s *sheet.Sheet) {
			s.H.Units = []model.Unit{{ID: "U", Shield: model.Some(c.shield), DrainFrom: model.Some(c.from), DrainTo: model.Some(c.to)}}
		})
		Shields(s)
		if got := fmt.Sprint(told(s)); got != c.want {
			t.Errorf("%q to %q: %s, want %s", c.from, c.to, got, c.want)
		}
	}
}

// Where a tube is not held, each stretch by its stations, tenths only where there are some.
func TestWhereATubeIsNotHeld(t *testing.T) {
	got := heldSays([]stretch{{from: 10, to: 42.5}, {from: 99.96, to: 120.04}})
	if want := "is not held from 10 to 42.5 mm and 100 to 120 mm, because less lies beneath it there: build it up, or stop it " +
		"short"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

// What an outlet ends up on where nothing lies on the branch: its nominal diameter, and what holds it half a millimetre less, 9.5; where
// the smallest is not known, or is by mistake the larger, it is held by the nominal.
func TestWhatAnOutletEndsUpOn(t *testing.T) {
	for _, c := range []struct{ least, want unit.Millimetre }{{9.5, 9.5}, {0, 10}, {10.2, 10}} {
		s := oneBranch(func(s *sheet.Sheet) { s.Branches[0].OverMinMM = c.least })
		if got := FitOutlet(s, 0, "J", catalogue.Outlet{PortMM: 40}); got != (OutletFit{MostMM: 10, LeastMM: c.want}) {
			t.Errorf("%v: %+v, want 10 and %v", c.least, got, c.want)
		}
	}
}
