package figure

import (
	"encoding/json"
	"fmt"
	"math"
	"reflect"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
)

// shownAs says for every exported field of what a sheet holds under which key the figures
// show it, or, after "not: ", why they do not. A new field of a sheet fails the test until it
// stands here, and what is said to be shown is compared with the figure, value by value.
var shownAs = map[string]map[string]string{
	"Totals": {
		"Wires": "wires", "Units": "units", "Spares": "spares", "Fillers": "fillers", "WireMM": "not: wire_m is in metres",
		"Gram": "mass_g",
	},
	"Branch": {
		"Make": "make", "Proposed": "proposed", "OverMM": "over_mm", "OverMinMM": "over_min_mm", "OverMaxMM": "over_max_mm",
		"TapeMM": "tape_mm", "TapeMinMM": "not: what a sheath grips at the least, a step on the way to its verdict", "Gram": "mass_g",
		"LaidMM":  "not: the length between the sorted zones, which lay_mm and turns use",
		"Waiting": "not: the figures are made of complete sheets", "Components": "not: the members of its layers",
		"As": "not: the layers that are asked for; layers shows those that lie", "Layers": "not: an object of its own, layers",
		"Standing": "not: the standing of a figure is said on screen and paper", "Buried": "not: a note says it",
		"Bend": "not: an object of its own, bend", "Sheath": "not: an object of its own, sheath",
		"Covers": "not: objects of their own, covers", "Ambient": "not: ambient_c of the file, or the rule's",
		"Warm":    "not: hottest_c of the branch and of its wires show it",
		"Learned": "not: predicted_over_mm, learned_over_mm and learned_spread_mm show it", "Predicted": "not: predicted_over_mm shows it",
		"Key": "not: for the next sheet", "Rank": "not: for the next sheet", "PlanKey": "not: for the next sheet", "Said": "not: snags",
		"SaidOver": "not: snags", "Outlets": "not: what is said of the transition names the outlet",
	},
	"Layer": {
		"Members": "not: the ids are in members", "Fillers": "fillers", "FillerMM": "filler_mm", "Spares": "spares", "Takes": "takes",
		"Room": "room", "Gap": "gap", "BedMM": "bed_mm", "OverMM": "over_mm", "TapeMM": "tape_mm", "BuiltMM": "built_mm",
		"BuiltOf": "built_of", "LayMM": "lay_mm", "Turns": "turns",
		"LayDeg": "lay_deg", "Hand": "hand", "Loss": "lay_loss", "Lift": "not: proud_mm shows it", "ProudMM": "proud_mm",
		"Tracer": "not: the first of its members, which the lay card marks",
		"BentMM": "not: the why of the bend; mismatch_mm of the branch shows the worst", "FlatMM": "not: the why of the bend",
		"Beside": "not: an offer of the bench", "ZigZag": "not: a note says it", "Closes": "not: a warning says it",
	},
	"Bend": {"MinMM": "min_mm", "Rule": "rule", "MismatchMM": "mismatch_mm"},
	"Sheath": {
		"Part": "part", "Proposed": "proposed", "Tube": "not: of the catalogue",
		"Verdict": "not: slides, grips, slide_mm, grip_ratio, wall_mm and over_mm show it", "FromMM": "not: covers shows it",
		"ToMM": "not: covers shows it", "CutMM": "cut_mm", "BeneathMM": "not: covers shows what lies beneath it",
		"BeneathMinMM": "not: covers shows what lies beneath it", "PassMM": "not: slide_mm shows what it leaves",
		"PassAt": "not: the why of slide_mm", "PassStationMM": "not: the why of slide_mm", "Gram": "not: mass_g is without covers",
		"Others": "not: an offer of the bench", "KindAll": "not: it decides a level", "Pass": "not: the why of slide_mm",
	},
	"Covered": {
		"Index": "not: the order of the objects", "Under": "not: the order of the objects", "What": "what", "Part": "part",
		"FromMM": "from_mm", "ToMM": "to_mm", "UnderMM": "not: over_mm less twice thick_mm", "OverMM": "over_mm", "ThickMM": "thick_mm",
		"ThickGuess": "not: the standing of a figure is said on screen and paper", "Tube": "not: of the catalogue",
		"Verdict": "not: a snag says what is wrong", "PassMM": "not: the threading list has it",
		"PassAt": "not: the threading list has it", "CutMM": "cut_mm", "Gram": "not: mass_g is without covers",
		"UnderTapeMin": "not: a step on the way to its verdict", "UnderOverMost": "not: a step on the way to its verdict",
		"Ends": "not: the threading list has it",
	},
	"Wire": {
		"Dia": "not: of the catalogue, or measured", "Entry": "not: of the catalogue", "Known": "not: its figures are null without",
		"Path": "not: the ids are in path", "HasPath": "not: path is empty without", "Cut": "cut_mm", "Finished": "finished_mm",
		"GramPerM": "not: of the catalogue", "Drop": "drop_v",
		"Circuit": "not: tested against drop_max_v; a snag says it", "Heats": "carries_a", "Guard": "not: the feeds show it",
		"PulseBurns": "not: a stop says it", "FeedBurns": "not: a stop says it", "Bound": "not: limit_a and limited_by show it",
		"BoundAt": "not: limited_by shows it", "HottestC": "hottest_c",
		"HottestIn": "not: the why of hottest_c",
		"Limits":    "not: the least of them is limit_a; the bench lists all",
	},
	"Term": {
		"Used": "used", "Spare": "spare", "Reserved": "reserved", "Blank": "blank", "Contacts": "contacts", "SealPlugs": "seal_plugs",
		"Cavities": "not: of the file or the catalogue", "State": "not: the tables of connectors have it cavity by cavity",
		"Stubs": "not: the bill has them", "HasContacts": "not: contacts is null without", "Sealed": "not: of the file or the catalogue",
		"Free": "not: the tables of connectors have it cavity by cavity",
	},
	"Feed": {
		"Load": "load_a", "Most": "most_a", "Device": "not: of the file; opens_a shows what it takes",
		"Outputs": "not: of the file", "All": "not: of the file", "Legs": "not: of the file", "Beyond": "not: a step to load_a",
		"Back": "not: a step to a snag", "Near": "not: a step to a snag", "Short": "not: a step to a snag", "Far": "not: a step to a snag",
	},
}

// jsonOf is the figures of a value by key, as they are printed.
func jsonOf(t *testing.T, v any) map[string]any {
	t.Helper()
	b, err := json.Marshal(v)
	if err != nil {
		t.Fatal(err)
	}
	var out map[string]any
	if err := json.Unmarshal(b, &out); err != nil {
		t.Fatal(err)
	}
	return out
}

func TestEveryFigureIsShown(t *testing.T) {
	base := calctest.Laid(t, "demo")
	s := calc.Complete(base.H.EditBranch(0, func(b *model.Branch) {
		b.Covers = []model.Cover{{What: model.CoverTape}, {What: model.CoverSheath, Part: model.Some("AS23053/16 15.9")},
			{What: model.CoverSleeve, Part: model.Some("AS23053/16 19.0")}}
	}), calctest.Catalogue(t), nil)
	compared := map[string]int{}
	check := func(name string, of any, shown any) {
		v := reflect.Indirect(reflect.ValueOf(of))
		figures := jsonOf(t, shown)
		for k := range v.NumField() {
			field := v.Type().Field(k)
			key, listed := shownAs[v.Type().Name()][field.Name]
			switch {
			case !field.IsExported() || strings.HasPrefix(key, "not: "):
				continue
			case !listed:
				t.Fatalf("%s.%s is in no figure, and no reason is given here", v.Type().Name(), field.Name)
			}
			got, there := figures[key]
			if !there {
				t.Fatalf("%s.%s: the figures have no key %q", v.Type().Name(), field.Name, key)
			}
			want := v.Field(k)
			if o := want.FieldByName; want.Kind() == reflect.Struct && o("Set").IsValid() {
				if got == nil && o("Set").Bool() {
					t.Errorf("%s: %s.%s is known, the figures say null", name, v.Type().Name(), field.Name)
				}
				want = o("V")
			}
			if got == nil {
				continue // not known
			}
			compared[v.Type().Name()+"."+field.Name]++
			switch want.Kind() {
			case reflect.Float64:
				// 0.005: the coarsest figure is printed to two places
				if f, is := got.(float64); !is || math.Abs(f-want.Float()) > 0.005 {
					t.Errorf("%s: %s.%s is %v, the figures say %v", name, v.Type().Name(), field.Name, want.Float(), got)
				}
			case reflect.Int:
				if f, is := got.(float64); !is || f != float64(want.Int()) {
					t.Errorf("%s: %s.%s is %v, the figures say %v", name, v.Type().Name(), field.Name, want.Int(), got)
				}
			default:
				if fmt.Sprint(got) != fmt.Sprint(want.Interface()) {
					t.Errorf("%s: %s.%s is %v, the figures say %v", name, v.Type().Name(), field.Name, want.Interface(), got)
				}
			}
		}
		for f := range shownAs[v.Type().Name()] {
			if _, is := v.Type().FieldByName(f); !is {
				t.Errorf("%s.%s is listed here and is gone", v.Type().Name(), f)
			}
		}
	}
	check("all", &s.Totals, figureTotals(s))
	for i := range s.Branches {
		b, id := &s.Branches[i], s.H.Branches[i].ID
		check(id, b, branch(s, i))
		for k := range b.Layers {
			check(id, &b.Layers[k], layer(b, k))
		}
		check(id, &b.Bend, branch(s, i).Bend)
		check(id, &b.Sheath, branch(s, i).Sheath)
		shown := covers(b)
		for k := range b.Covers {
			at := k
			if !b.Covers[k].Under {
				at++ // the sheath lies between
			}
			check(id, &b.Covers[k], shown[at])
		}
	}
	built := calctest.Laid(t, "built-up")
	check("built up", &built.Branches[0].Layers[0], layer(&built.Branches[0], 0))
	for i := range s.Wires {
		check(s.H.Wires[i].ID, &s.Wires[i], wire(s, i))
	}
	for i := range s.Terms {
		check(s.H.Terminations[i].ID, &s.Terms[i], term(s, i))
	}
	feeds := calctest.Laid(t, "feeds")
	for i := range feeds.Feeds {
		check(feeds.H.Feeds[i].ID, &feeds.Feeds[i], feed(feeds, i))
	}
	for kind, fields := range shownAs {
		for f, key := range fields {
			if !strings.HasPrefix(key, "not: ") && compared[kind+"."+f] == 0 {
				t.Errorf("%s.%s was compared with no figure", kind, f)
			}
		}
	}
}

// A list of a type says so; a type of a sheet that is in no list is one that nobody thought of.
func TestEveryListOfASheetIsShown(t *testing.T) {
	why := map[string]string{"Units": "not: their diameters are of the file or worked out; branches show them as members",
		"Splices": "not: the list of splices has them", "H": "not: the file", "X": "not: an index", "Index": "not: an index",
		"Cat": "not: the catalogue", "Base": "not: the catalogue", "Limits": "not: the rules", "Unrated": "not: a stop says it",
		"Proposals": "not: for the next sheet"}
	shown := map[string]bool{"Totals": true, "Wires": true, "Feeds": true, "Branches": true, "Terms": true, "Snags": true}
	kept := reflect.TypeFor[sheet.Sheet]()
	for k := range kept.NumField() {
		f := kept.Field(k)
		if notForReaders := strings.HasPrefix(f.Name, "Said") || f.Name == "Same" || f.Name == "Reuse" || f.Name == "LaidBy" ||
			f.Name == "Back" || f.Name == "Kept"; !f.IsExported() || notForReaders {
			continue
		}
		if !shown[f.Name] && why[f.Name] == "" {
			t.Errorf("Sheet.%s is in no figure, and no reason is given here", f.Name)
		}
	}
}
