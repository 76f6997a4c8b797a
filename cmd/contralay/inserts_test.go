package main

import (
	"contralay/ui/guide/manual"
	"encoding/json"
	"slices"
	"strings"
	"testing"
)

// The question of the README, answered by hand from the chart: only 23-54 and 25-F4 have two of size 12
// for 2.9 mm beside 35 for the thin ones, and in both 20 AWG goes to size 16, whose seal is too wide.
func TestInserts(t *testing.T) {
	o := call(t, "", "inserts", "32x22", "4x20", "2x2.9mm", "--spares", "3")
	for _, want := range []string{
		"What must go in: 32 x 22 AWG, 4 x 20 AWG, 2 x 2.9 mm, 3 spares of 22 AWG.",
		"The gauge of 2.9 mm is not given: only the seal is judged.",
		"23-54             22    12  5 of 22D, 5 of 16, 2 of 12   25-F4 leaves 13 more",
		"  ? 4 x 20 AWG, 1.27 mm: outside the seal of size 16, 1.65 to 2.77 mm\n",
		"25-F4             24    25  14 of 22D, 9 of 16, 2 of 12", "Not judged: 17-2, 19-18,",
	} {
		if !strings.Contains(o.out, want) {
			t.Errorf("no line says %q:\n%s", want, o.out)
		}
	}
	if o.code != 0 || o.err != "" {
		t.Errorf("exit %d, %s", o.code, o.err)
	}
	if many := call(t, "", "inserts", "37x22"); !strings.Contains(many.out, "more: --full lists all") ||
		strings.Count(call(t, "", "inserts", "37x22", "--full").out, "\n") <= strings.Count(many.out, "\n") {
		t.Errorf("ten are listed, or all:\n%s", many.out)
	}
	// Nothing takes it: said, and its work is done.
	for _, c := range []struct {
		args []string
		says string
	}{
		{[]string{"inserts", "2x2/0", "--spec", "AS22759/34"}, "No contact takes 2/0 AWG: it is too thick for every barrel."},
		{[]string{"inserts", "2x30"}, "No contact takes 30 AWG: it is too thin for every barrel."},
		{[]string{"inserts", "188x24"}, "Nearest is 25-187: it has no place for 1 x 24"},
		{[]string{"inserts", "2x9mm"}, "No contact takes 9 mm: no seal takes it."},
	} {
		o := call(t, "", c.args...)
		if o.code != 0 || !strings.Contains(strings.ReplaceAll(o.out, "\n  ", " "), c.says) {
			t.Errorf("%q: exit %d, no line says %q:\n%s", c.args, o.code, c.says, o.out)
		}
	}
	// Plain, in eighty columns.
	for _, args := range [][]string{
		{"inserts", "32x22", "4x20", "2x2.9mm", "--full"}, {"inserts", "1x22", "--full"},
		{"inserts", "--shielded", "12x24", "3x16", "5x12"},
		{"inserts", "100x22", "30x20", "8x16", "4x12", "--spares", "10"}, {"inserts", "10x22", "--shielded", "2x24", "--pairs", "3"},
	} {
		for line := range strings.SplitSeq(call(t, "", args...).out, "\n") {
			if len(line) > 80 || strings.ContainsFunc(line, func(r rune) bool { return r < ' ' || r > '~' }) {
				t.Errorf("%q: %d columns: %q", args, len(line), line)
			}
		}
	}
}

// Two shielded pairs take six cavities, two pairs four; a number alone is of the first gauge asked for.
func TestInsertsJSON(t *testing.T) {
	asked := func(args ...string) (object, []object) {
		t.Helper()
		o := call(t, "", append(args, "--json")...)
		var all object
		if err := json.Unmarshal([]byte(o.out), &all); err != nil || o.code != 0 {
			t.Fatalf("%q: %v, exit %d\n%s", args, err, o.code, o.out)
		}
		var fits []object
		for _, f := range all["fits"].([]any) {
			fits = append(fits, f.(object))
		}
		return all, fits
	}
	all, fits := asked("inserts", "6x20", "--shielded", "2", "--pairs", "2x24", "--spares=1")
	var kinds []string
	sum := 0.0
	for _, k := range all["asked"].([]any) {
		x := k.(object)
		sum += x["count"].(float64)
		kinds = append(kinds, x["for"].(string)+" "+x["wire"].(string))
	}
	if got := strings.Join(kinds, ", "); got != "wire 20 AWG, wire 24 AWG, drain 20 AWG, spare 20 AWG" || sum != 6+4+6+1 {
		t.Errorf("asked %s, %v cavities", got, sum)
	}
	for _, f := range fits {
		free := 0.0
		for _, l := range f["left"].([]any) {
			free += l.(object)["count"].(float64)
		}
		goes := 0.0
		for _, g := range f["goes"].([]any) {
			goes += g.(object)["count"].(float64)
		}
		if free != f["free"].(float64) || goes != 17 {
			t.Errorf("%v: %v free, by size %v; %v wires go", f["id"], f["free"], free, goes)
		}
	}
	if f := fits[0]; f["id"] != "14-18" || f["free"].(float64) != 1 || f["shell"].(float64) != 14 || f["qualified"] != true {
		t.Errorf("first is %v", fits[0])
	}
	if all["nearest"] != nil || len(all["not_judged"].([]any)) != 11 {
		t.Errorf("nearest %v, not judged %v", all["nearest"], all["not_judged"])
	}
	if all, fits := asked("inserts", "188x24"); len(fits) != 0 || all["nearest"].(object)["id"] != "25-187" {
		t.Errorf("%v", all)
	}
}

// A shop's own arrangement is ranked, and its contacts are judged by its own seal.
func TestInsertsOfAShop(t *testing.T) {
	shop := fileOf(t, "shop.toml", "[[insert]]\nid = \"X-2\"\nshell = 8\ncontacts = [{ size = \"20\", count = 2 }]\n"+
		"source = \"the part in hand\"\nstanding = \"house\"\n[[contact]]\nsize = \"20\"\nmax_a = 7.5\nlargest_awg = \"20\"\n"+
		"smallest_awg = \"24\"\nseal_min_mm = 1.2\nseal_max_mm = 2.0\nsource = \"the maker's sheet\"\nstanding = \"house\"\n")
	a, b := call(t, "", "inserts", "2x20", "--catalogue", shop, "--full"), call(t, "", "inserts", "2x22", "--catalogue", shop, "--full")
	// the diameters of AS22759/32 are from memory: what its seal does not take is said, and stays in the list
	_, mine, _ := strings.Cut(b.out, "X-2 ")
	lines := strings.SplitN(mine, "\n", 3)
	if !strings.Contains(a.out, "X-2 ") || strings.Contains(a.out, "outside the seal of size 20, 1.2") || len(lines) < 3 ||
		!strings.Contains(lines[1], "1.09 mm: outside the seal of size 20, 1.2") {
		t.Errorf("20 AWG of 1.27 mm is in its seal, 22 AWG of 1.09 mm is not:\n%s\n%s", a.out, b.out)
	}
}

func TestInsertsMisuse(t *testing.T) {
	for _, c := range []struct {
		args  []string
		words []string
	}{
		{[]string{"inserts"}, []string{"32x22 4x20 2x2.9mm"}},
		{[]string{"inserts", "3x99"}, []string{"3x99", "has no size 99", "22"}},
		{[]string{"inserts", "22"}, []string{`"22"`, "quantity x size"}},
		{[]string{"inserts", "0x22"}, []string{"0x22", "1 to 500"}},
		{[]string{"inserts", "3xNaNmm"}, []string{"3xNaNmm", "0.1 to 50 mm"}},
		{[]string{"inserts", "2x22", "--spares", "many"}, []string{"many", "0 to 100"}},
		{[]string{"inserts", "2x22", "--pairs", "two"}, []string{"--pairs", "two", "2x24"}},
		{[]string{"inserts", "2x22", "--shielded", "2x99"}, []string{"--shielded", "2x99"}},
		{[]string{"inserts", "2x22", "--spec", "none such"}, []string{"none such", "AS22759/32"}},
	} {
		call(t, "", c.args...).refused(t, 1, c.words...)
	}
	if !slices.Contains(manual.Names(), "inserts") {
		t.Error("a shell does not complete inserts")
	}
}
