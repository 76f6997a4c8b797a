package main

import (
	"encoding/json"
	"maps"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"contralay/model/file"
	"contralay/model/shorttest"
)

// object is a JSON object read without any type of ours, so that a key that is
// renamed in the program fails here.
type object = map[string]any

// stated is the keys of every object of figures, as the manual of the command
// states them. More may follow.
var stated = map[string]string{
	"":         "harness totals branches wires terminations snags",
	"harness":  "name number revision",
	"totals":   "wires units spares fillers wire_m mass_g",
	"branches": "id make proposed over_mm over_min_mm over_max_mm tape_mm mass_g hottest_c layers bend sheath",
	"branches.layers": "index members fillers filler_mm spares takes room gap bed_mm over_mm tape_mm lay_mm turns lay_deg hand lay_loss " +
		"proud_mm",
	"branches.bend":   "min_mm rule mismatch_mm",
	"branches.sheath": "part proposed slides grips slide_mm grip_ratio wall_mm over_mm cut_mm",
	"wires":           "id cut_mm finished_mm path drop_v limit_a limited_by hottest_c",
	"terminations":    "id used spare reserved blank contacts seal_plugs",
	"snags":           "level rule where says",
}

// hasKeys checks every object below v against stated and counts the visits.
func hasKeys(t *testing.T, path string, v any, seen map[string]int) {
	t.Helper()
	switch v := v.(type) {
	case []any:
		for _, e := range v {
			hasKeys(t, path, e, seen)
		}
	case object:
		seen[path]++
		for _, k := range strings.Fields(stated[path]) {
			if _, there := v[k]; !there {
				t.Errorf("%q lacks the key %q", path, k)
			}
		}
		for k, e := range v {
			hasKeys(t, strings.TrimPrefix(path+"."+k, "."), e, seen)
		}
	}
}

func figures(t *testing.T, name string) object {
	t.Helper()
	o := call(t, "", "figures", name)
	if o.code != 0 || o.err != "" {
		t.Fatalf("figures: exit %d, %s", o.code, o.err)
	}
	var f object
	if err := json.Unmarshal([]byte(o.out), &f); err != nil {
		t.Fatal(err)
	}
	return f
}

// with finds the object of a list whose key has a value.
func with(t *testing.T, list any, key, value string) object {
	t.Helper()
	for _, e := range list.([]any) {
		if e.(object)[key] == value {
			return e.(object)
		}
	}
	t.Fatalf("nothing has %s = %s", key, value)
	return nil
}

func TestFiguresOfExample(t *testing.T) {
	f := figures(t, example)
	seen := map[string]int{}
	hasKeys(t, "", f, seen)
	for path := range stated {
		if seen[path] == 0 {
			t.Errorf("figures of the example hold no %q", path)
		}
	}
	t1 := with(t, f["branches"], "id", "T1")
	layer := t1["layers"].([]any)[1].(object)
	for _, c := range []struct {
		name      string
		got       any
		want, tol float64
	}{
		// The layer's thickest component stands on the centre: 2.9 + 2 x 1.27.
		{"over of T1", t1["over_mm"], 5.440, 0.0005},
		{"over of layer 1", layer["over_mm"], 5.440, 0.0005},
		{"gap of layer 1", layer["gap"], 0.094, 0.0005}, // given to three places
		{"room of layer 1", layer["room"], 1, 0},
		{"fillers of layer 1", layer["fillers"], 0, 0},
		{"fillers of the loom", f["totals"].(object)["fillers"], 0, 0},
		{"wires", f["totals"].(object)["wires"], 16, 0}, // counted in the file, as are the next two
		{"spares", f["totals"].(object)["spares"], 4, 0},
		{"units", f["totals"].(object)["units"], 1, 0},
	} {
		if v, is := c.got.(float64); !is || math.Abs(v-c.want) > c.tol {
			t.Errorf("%s is %v, want %v within %v", c.name, c.got, c.want, c.tol)
		}
	}
	centre := t1["layers"].([]any)[0].(object)
	for _, k := range []string{"takes", "room", "gap"} {
		if centre[k] != nil {
			t.Errorf("%s of the centre is %v, want null", k, centre[k])
		}
	}
	if got := t1["bend"].(object)["mismatch_mm"]; got != nil {
		t.Errorf("mismatch without an angle is %v, want null", got)
	}
	if got := layer["hand"]; got != "LH" {
		t.Errorf("the outer layer is laid %v, the file says LH", got)
	}
	// Heat and current limits are not worked out: null, never 0.
	for _, w := range f["wires"].([]any) {
		for _, k := range []string{"limit_a", "limited_by", "hottest_c"} {
			if v := w.(object)[k]; v == 0.0 || v == "" {
				t.Errorf("%s of wire %v is %v: a figure without a value is null", k, w.(object)["id"], v)
			}
		}
	}
	for _, e := range f["terminations"].([]any) {
		m := e.(object)
		sum := m["used"].(float64) + m["spare"].(float64) + m["reserved"].(float64) + m["blank"].(float64)
		want := map[string]float64{"P1": 18, "AUX1": 5}[m["id"].(string)] // 14-18 has 18 cavities
		if want == 0 {
			want = 2
		}
		if sum != want {
			t.Errorf("%v: used, spare, reserved and blank make %v, it has %v cavities", m["id"], sum, want)
		}
	}
	if a, b := call(t, "", "figures", example), call(t, readFile(t, example), "figures", "-"); a.out != b.out {
		t.Error("figures of the file and of standard input differ")
	}
}

func TestPlan(t *testing.T) {
	o := call(t, "", "plan", "16x22", "--spares", "3")
	lines := strings.Split(o.out, "\n")
	// One, six round it and twelve round those are nineteen of one size: sixteen
	// and three spares close without filler.
	if o.code != 0 || len(lines) < 2 || !regexp.MustCompile(`^1 · 6 · 12\s+3\s+0\s`).MatchString(lines[1]) {
		t.Errorf("exit %d; want 1 · 6 · 12 with 3 spares and no filler first:\n%s%s", o.code, o.out, o.err)
	}

	j := call(t, "", "plan", "16x22", "--spares", "3", "--effort", "1000", "--json")
	var plans []object
	if err := json.Unmarshal([]byte(j.out), &plans); err != nil {
		t.Fatal(err)
	}
	for _, p := range plans {
		for _, k := range strings.Fields("cost proven fillers spares over_mm lumpy layers") {
			if _, there := p[k]; !there {
				t.Errorf("a plan lacks %q", k)
			}
		}
		count := 0
		for _, l := range p["layers"].([]any) {
			l := l.(object)
			for _, k := range strings.Fields("sizes fillers filler_mm spares takes room gap over_mm proud_mm") {
				if _, there := l[k]; !there {
					t.Errorf("a layer of a plan lacks %q", k)
				}
			}
			for size, n := range l["sizes"].(object) {
				if size != "1.09" {
					t.Errorf("a size is written %q, want 1.09", size)
				}
				count += int(n.(float64))
			}
		}
		if want := 16 + int(p["spares"].(float64)); count != want {
			t.Errorf("a plan lays %d, want 16 and its spares: %d", count, want)
		}
	}
	if !slices.IsSortedFunc(plans, func(a, b object) int { return int(math.Copysign(1, a["cost"].(float64)-b["cost"].(float64))) }) {
		t.Error("plans are not best first")
	}

	for _, args := range [][]string{
		{"--spares", "3", "--json", "plan", "16x22"}, {"plan", "--json", "16x22", "--spares=3"},
		{"--json", "plan", "--spares", "3", "--", "16x22"},
		{"plan", "16x22", "--spares", "3", "--json", "--centres", "unequal", "--lay-ratio", "12"},
	} {
		if got := call(t, "", args...); got.out != j.out {
			t.Errorf("%q prints something else than with the flags behind", args)
		}
	}
	for _, kind := range []string{"equal", "unequal", "built"} {
		if got := call(t, "", "plan", "32x22", "4x20", "2x2.9mm", "--centres", kind); got.code != 0 || strings.Count(got.out, "\n") < 2 {
			t.Errorf("--centres %s: exit %d, %s%s", kind, got.code, got.out, got.err)
		}
	}
}

// A plan says what it would be as a branch, and takes a centre, so many layers, and more effort.
func TestPlanAsked(t *testing.T) {
	shorttest.Turn(t)
	row := func(args ...string) []string {
		o := call(t, "", append([]string{"plan"}, args...)...)
		if o.code != 0 {
			t.Errorf("%q: exit %d %s", args, o.code, o.err)
		}
		return strings.Split(o.out, "\n")
	}
	// Seven of 1.09 mm lie 3.30 mm over: 6 times that is 19.8 mm, more than ten wires' 10.9.
	if got := row("7x22"); !regexp.MustCompile(`^1 · 6 .*\s20$`).MatchString(got[1]) || !strings.HasPrefix(got[2], "Proven") {
		t.Errorf("%q", got)
	}
	if got := row("24x22", "--centre", "4"); !strings.HasPrefix(got[1], "4 · ") {
		t.Errorf("a centre of four: %q", got)
	}
	if got := row("20x22", "9x20", "--centre", "1x22,2x20"); !strings.HasPrefix(got[1], "3 · ") {
		t.Errorf("a centre of 1x22 and 2x20: %q", got)
	}
	if got := row("40x22", "--layers", "2"); strings.Count(got[1], "·") != 2 {
		t.Errorf("two layers round the centre: %q", got)
	}
	if got := row("3x22", "--layers", "5"); got[0] != "There is no such lay-up." {
		t.Errorf("three wires in five layers: %q", got)
	}
	cost := func(effort string) float64 {
		var plans []object
		o := call(t, "", "plan", "20x24", "16x22", "14x20", "12x18", "9x16", "--effort", effort, "--json")
		if err := json.Unmarshal([]byte(o.out), &plans); err != nil {
			t.Fatal(err)
		}
		for _, k := range strings.Fields("least_cost relaxed g_per_m bend sheath") {
			if plans[0][k] == nil {
				t.Errorf("a plan lacks %q", k)
			}
		}
		return plans[0]["cost"].(float64)
	}
	most := "30000"
	if shorttest.Long() {
		most = "300000"
	}
	if few, many := cost("1"), cost(most); many > few+1e-9 {
		t.Errorf("more effort costs %v, less %v", many, few)
	}
	for _, wrong := range [][]string{{"--centre", "9"}, {"--centre", "30x22"}, {"--centre", "3x22,2x20"}, {"--layers", "0"},
		{"--effort", "-1"}, {"--effort", "many"}} {
		if o := call(t, "", append([]string{"plan", "20x22", "9x20"}, wrong...)...); o.code != 2 || !strings.Contains(o.err, wrong[0]) {
			t.Errorf("%q: exit %d %s", wrong, o.code, o.err)
		}
	}
}

func TestCheckOfTightSheath(t *testing.T) {
	if o := call(t, "", "check", example); o.code != 0 {
		t.Errorf("check of the example: exit %d\n%s%s", o.code, o.out, o.err)
	}
	text := strings.Replace(readFile(t, example), `"AS23053/16 9.5"`, `"AS23053/16 4.8"`, 1)
	name := fileOf(t, "tight.toml", text)
	o := call(t, "", "check", name)
	if o.code != 1 {
		t.Errorf("exit %d, want 1", o.code)
	}
	first, _, _ := strings.Cut(o.out, "\n")
	// The bore of a 4.8 tube is 4.75 mm (3/16 inch); what it must pass is the bundle
	// at its largest.
	over := with(t, figures(t, name)["branches"], "id", "T1")["over_max_mm"].(float64)
	short := strconv.FormatFloat(over-4.75, 'f', 2, 64)
	for _, w := range []string{"stop", "T1", "AS23053/16 4.8", short + " mm too small"} {
		if !strings.Contains(first, w) {
			t.Errorf("the first snag does not say %q: %s", w, first)
		}
	}
	if !regexp.MustCompile(`\d+ (to \d+ )?mm of T1`).MatchString(first) {
		t.Errorf("the first snag names no station of T1: %s", first)
	}
	if in := call(t, text, "check", "-"); in.code != 1 || in.out != o.out {
		t.Errorf("check - : exit %d, %q", in.code, in.out)
	}
	if in := call(t, readFile(t, example), "check", "-"); in.code != 0 {
		t.Errorf("check - of the example: exit %d", in.code)
	}
}

func TestNew(t *testing.T) {
	name := filepath.Join(t.TempDir(), "fresh.toml")
	if o := call(t, "", "new", name); o.code != 0 || o.err != "" {
		t.Fatalf("new: exit %d, %s", o.code, o.err)
	}
	first := readFile(t, name)
	d, err := file.Load(name)
	if err != nil {
		t.Fatal(err)
	}
	if again := string(file.Encode(d)); again != first {
		t.Errorf("a new file does not save byte-equal:\n%s", again)
	}
	if o := call(t, "", "check", name); o.code != 0 {
		t.Errorf("check of a new file: exit %d, %s", o.code, o.out)
	}
	call(t, "", "new", name).refused(t, 1, name)
	if readFile(t, name) != first {
		t.Error("a second new changed the file")
	}
	beside, err := os.ReadDir(filepath.Dir(name))
	if err != nil {
		t.Fatal(err)
	}
	if len(beside) != 1 {
		t.Errorf("new left more than its file: %v", beside)
	}
}

// Nothing of a harness depends on the order of a map: figures are the same bytes
// each time.
func TestFiguresTwice(t *testing.T) {
	runs := map[string]bool{}
	for range 3 {
		runs[call(t, "", "figures", example).out] = true
	}
	if len(runs) != 1 {
		t.Errorf("figures of one file came out in %d ways", len(slices.Collect(maps.Keys(runs))))
	}
}
