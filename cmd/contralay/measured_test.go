package main

import (
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/model/catalogue"
	"contralay/model/file"
)

// shopOf is so many builds of the nineteen, whose layers were measured with a bias and a
// spread, from a fixed seed.
func shopOf(t *testing.T, n int, bias, spread float64) string {
	t.Helper()
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	d, err := file.Parse([]byte(nineteen()), "nineteen")
	if err != nil {
		t.Fatal(err)
	}
	over := calc.Complete(&d.Harness, cat, nil).Branches[0].Layers[2].OverMM
	r := rand.New(rand.NewPCG(7, 11))
	var b strings.Builder
	b.WriteString(nineteen())
	for k := range n {
		read := float64(over) * (1 + bias + spread*r.NormFloat64())
		fmt.Fprintf(&b, "\n[[build]]\nserial = \"%d\"\n\n  [[build.reading]]\n  branch  = \"T1\"\n  layer   = 2\n  over_mm = [%.4f]\n", k+1,
			read)
	}
	return b.String()
}

// A shop whose bundles stand 2 % over the sheet is told so, with its interval; what it
// accepts is kept with its history, and every figure goes by it from then on and says so.
func TestLearnAndAccept(t *testing.T) {
	home := t.TempDir()
	env := environ(t, "XDG_CONFIG_HOME="+home)
	name := fileOf(t, "loom.toml", shopOf(t, 24, 0.02, 0.006))
	r := callIn(t, env, "", "measured", name)
	if r.code != ok || !strings.Contains(r.out, "over, 3 layers: 24 readings") || !strings.Contains(r.out, "enough to correct by") {
		t.Fatalf("%+v", r)
	}
	plain := fileOf(t, "plain.toml", nineteen())
	overOf := func() (over, learned float64) {
		t.Helper()
		f := callIn(t, env, "", "figures", plain)
		get := func(key string) float64 {
			_, rest, found := strings.Cut(f.out, `"`+key+`": `)
			if !found {
				return 0
			}
			v, err := strconv.ParseFloat(strings.TrimRight(strings.Fields(rest)[0], ","), 64)
			if err != nil {
				t.Fatal(err)
			}
			return v
		}
		return get("over_mm"), get("learned_over_mm")
	}
	if !strings.Contains(r.out, "accepting it changes:\n    loom.toml T1: OD 5.5 to 5.6 mm") {
		t.Errorf("nothing says what it would change:\n%s", r.out)
	}
	before, none := overOf()
	if none != 0 {
		t.Errorf("learned %v before anything is accepted", none)
	}
	if r := callIn(t, env, "", "measured", name, "--accept", "over, 3 "+
		"layers"); r.code != ok || !strings.Contains(r.out, "corrections.toml") {
		t.Fatalf("%+v", r)
	}
	after, learned := overOf()
	if math.Abs(after/before-1.02) > 0.004 || math.Abs(after-before-learned) > 1e-3 {
		t.Errorf("over %v, before %v, learned %v: 2 %% was put in", after, before, learned)
	}
	dir := t.TempDir()
	callIn(t, env, "", "sheet", plain, "-o", dir)
	if page := wordsOf(readFile(t, dir+"/RUN-1-A.html")); !strings.Contains(page, "predicted 5.5, learned +0.1") ||
		!strings.Contains(page, "from 24 readings") {
		t.Error("the sheet says nothing of what was learned")
	}
	// Accepted again, the first stays as history; the file is read by the program itself.
	callIn(t, env, "", "measured", name, "--accept", "all")
	kept := readFile(t, filepath.Join(home, "contralay", "corrections.toml"))
	if strings.Count(kept, `of       = "over, 3 layers"`) != 2 || !strings.Contains(kept, "loom.toml") {
		t.Errorf("%s", kept)
	}
	if again, _ := overOf(); math.Abs(again-after) > 1e-6 {
		t.Errorf("corrected twice: %v, once %v", again, after)
	}
	// Withdrawn it corrects nothing, and stays as history. What is not corrected cannot be withdrawn.
	r = callIn(t, env, "", "measured", "--withdraw", "over, 9 layers")
	if r.code != usage || !strings.Contains(r.err, "In use are over, 3 layers") {
		t.Errorf("%+v", r)
	}
	for _, of := range []string{"over, AS22759/32 22", "over, 3 layers"} { // of two that would do, the other still corrects
		r = callIn(t, env, "", "measured", plain, "--withdraw", of)
		if r.code != ok || !strings.Contains(r.out, of+" is no longer corrected") {
			t.Errorf("%+v", r)
		}
	}
	if !strings.Contains(r.out, "it changes:\n    plain.toml T1: OD 5.6 to 5.5 mm") {
		t.Errorf("%+v", r)
	}
	if now, learned := overOf(); now != before || learned != 0 {
		t.Errorf("over %v after it was withdrawn, before %v", now, before)
	}
	kept = readFile(t, filepath.Join(home, "contralay", "corrections.toml"))
	if strings.Count(kept, `of       = "over, 3 layers"`) != 3 {
		t.Errorf("%s", kept)
	}
	if r := callIn(t, env, "", "measured", "--withdraw", "over, 3 layers", "--accept", "all"); r.code != usage {
		t.Errorf("%+v", r)
	}
}

// Too few readings: it says so and corrects nothing; an outlier is named and may be left
// out; what cannot be is refused in one sentence and nothing is written.
func TestLearnTooLittle(t *testing.T) {
	home := t.TempDir()
	env := environ(t, "XDG_CONFIG_HOME="+home)
	few := fileOf(t, "few.toml", shopOf(t, 4, 0.02, 0.006))
	if r := callIn(t, env, "", "measured", few); !strings.Contains(r.out, "too few: 8 at least; nothing is corrected") {
		t.Errorf("%+v", r)
	}
	if r := callIn(t, env, "", "measured", few, "--accept", "over, 3 layers"); r.code != usage ||
		!strings.Contains(r.err, "nothing was written") {
		t.Errorf("%+v", r)
	}
	odd := strings.Replace(shopOf(t, 20, 0, 0.004), "over_mm = [5.", "over_mm = [6.", 1)
	name := fileOf(t, "odd.toml", odd)
	r := callIn(t, env, "", "measured", name)
	if !strings.Contains(r.out, "odd one out: odd.toml serial 1 T1 layer 2") {
		t.Fatalf("%s", r.out)
	}
	if r := callIn(t, env, "", "measured", name, "--accept", "over, 3 layers"); r.code != usage || !strings.Contains(r.err, "odd one out") {
		t.Errorf("an odd one was accepted: %+v", r)
	}
	if r := callIn(t, env, "", "measured", name, "--without", "nobody"); r.code != usage || !strings.Contains(r.err, "nobody") {
		t.Errorf("%+v", r)
	}
	again := fileOf(t, "again.toml", shopOf(t, 4, 0.02, 0.006))
	if r := callIn(t, env, "", "measured", few, few, again); !strings.Contains(r.out, "over, 3 layers: 4 readings") ||
		!strings.Contains(r.out, "more than once, counted once: 16") {
		t.Errorf("the same three times: %s", r.out)
	}
	if r := callIn(t, env, "", "measured", fileOf(t, "lost.toml",
		strings.Replace(shopOf(t, 3, 0, 0.001), "branch  = \"T1\"", "branch  = \"ZZ\"", 1))); !strings.Contains(r.out,
		"does not have, not counted: 1") {
		t.Errorf("%s", r.out)
	}
	if r := callIn(t, env, "", "measured", name, "--without", "odd.toml serial 1 T1 layer 2"); strings.Contains(r.out, "odd one out") ||
		!strings.Contains(r.out, "left out: odd.toml serial 1") {
		t.Errorf("%s", r.out)
	}
	if r := callIn(t, env, "", "measured", fileOf(t, "none.toml", nineteen())); r.code != ok ||
		!strings.Contains(r.out, "nothing was measured") {
		t.Errorf("%+v", r)
	}
	if r := callIn(t, env, "", "measured"); r.code != usage {
		t.Errorf("%+v", r)
	}
	if _, err := os.Stat(filepath.Join(home, "contralay", "corrections.toml")); err == nil {
		t.Error("something was written")
	}
}
