package main

import (
	"fmt"
	"math"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"contralay/model/shorttest"
)

// What the operators make of testdata/small, by hand: the line, the change, and what becomes of it.
// k is noticed, s survives, n is reached by no test.
const wantSmall = `
4 4 => (4+1) k
8 < => <= s
8 n < least => !(n < least) k
9 least => 0 k
11 n => 0 k
16 n, err = half(n) => if false {n, err = half(n)} k
19 err => nil k
23 2 => (2+1) k
23 != => == k
23 % => * k
23 0 => (0+1) k
24 0 => (0+1) s
24 odd{n} => nil k
26 / => * k
26 2 => (2+1) k
26 n / 2 => 0 k
31 "odd" => "" n
38 0 => (0+1) k
38 == => != k
39 at = i => if false {at = i} k
51 += => -= k
51 s += x => if false {s += x} k
53 s => *new(T) k
57 7 => (7+1) n
57 7 => 0 n
60 max => min k
60 max(a, b) => 0 k
`

func small(t *testing.T, pattern string) options {
	t.Helper()
	dir, err := filepath.Abs("testdata/small")
	if err != nil {
		t.Fatal(err)
	}
	return options{dir: dir, patterns: []string{pattern}, tests: []string{"./..."}, short: true, patience: 10 * time.Second}
}

// TestSmall runs every mutant of a small package: the copies of its functions do what the functions did, each fault
// is put where it is said, and what a test notices is told from what none does.
func TestSmall(t *testing.T) {
	if !shorttest.Long() {
		t.Skip("it calls the compiler for every fault: in the long form")
	}
	o := small(t, ".")
	rooms, err := load(o.dir, o.patterns, "")
	if err != nil {
		t.Fatal(err)
	}
	drawn, _, refused, err := draw(rooms, 0, 1)
	if err != nil {
		t.Fatal(err)
	}
	if refused != 0 {
		t.Errorf("%d do not compile", refused)
	}
	verdicts, err := o.try(drawn, t.Logf)
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, m := range drawn {
		got = append(got, fmt.Sprintf("%d %s => %s %c", m.line(), m.file.text[m.from:m.to], m.becomes, verdicts[m].what[0]))
		if by := verdicts[m].by; m.line() == 60 && by != "small/other TestPick" || m.line() == 8 && by != "" && by != "small TestAtLeast" {
			t.Errorf("%s was noticed by %q", m.change(), by)
		}
	}
	want := strings.Split(strings.TrimSpace(wantSmall), "\n")
	slices.Sort(got)
	slices.Sort(want)
	for _, w := range want {
		if !slices.Contains(got, w) {
			t.Errorf("missing: %s", w)
		}
	}
	for _, g := range got {
		if !slices.Contains(want, g) {
			t.Errorf("not wanted: %s", g)
		}
	}
	// The report counts what survives, and lets be what is called equivalent.
	var says strings.Builder
	say := func(format string, a ...any) { fmt.Fprintf(&says, format+"\n", a...) }
	reasons := map[string]string{}
	for _, m := range drawn {
		if verdicts[m].what != killed {
			reasons[m.key()] = "tried"
		}
	}
	all := fmt.Sprintf("\n%-40s %6d %6d %9d %10d %8d\n", "all", 27, 22, 0, 5, 0)
	if report(drawn, verdicts, reasons, say) != 100 || !strings.Contains(says.String(), all) {
		t.Errorf("not all are called equivalent: %s", says.String())
	}
	alive := "survived: small.go:8 swap < <=: if n < least {   [< => <=]"
	if share := report(drawn, verdicts, nil, say); math.Abs(share-100*22./27) > 1e-9 || !strings.Contains(says.String(), alive) {
		t.Errorf("the survivor is not listed: %s", says.String())
	}
}

// TestDraw: the same seed draws the same, another one others, and no statement twice.
func TestDraw(t *testing.T) {
	o := small(t, ".")
	drawnBy := func(seed int64, n int) (keys []string) {
		rooms, err := load(o.dir, o.patterns, "")
		if err != nil {
			t.Fatal(err)
		}
		drawn, statements, _, err := draw(rooms, n, seed)
		if err != nil {
			t.Fatal(err)
		}
		if statements != 16 {
			t.Errorf("%d statements, want 16", statements)
		}
		for _, m := range drawn {
			keys = append(keys, m.key())
		}
		return keys
	}
	first := drawnBy(1, 8)
	if !slices.Equal(first, drawnBy(1, 8)) {
		t.Error("the same seed draws others")
	}
	if slices.Equal(first, drawnBy(2, 8)) {
		t.Error("another seed draws the same")
	}
	if all := drawnBy(1, 100); len(all) != 16 {
		t.Errorf("%d of 16 statements give a mutant", len(all))
	}
}

// TestInfinite: the number that math.Inf is called with is left as it is, where one more has the same sign; any
// other number is changed, and so is what stands around such a call.
func TestInfinite(t *testing.T) {
	o := small(t, "./infinite")
	rooms, err := load(o.dir, o.patterns, "")
	if err != nil {
		t.Fatal(err)
	}
	drawn, _, _, err := draw(rooms, 0, 1)
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(string(rooms[0].files[0].text), "\n")
	var got []string
	for _, m := range drawn {
		if now := m.file.text[m.from:m.to]; strings.HasPrefix(m.operator, "number") || strings.HasPrefix(m.operator, "swap") {
			got = append(got, fmt.Sprintf("%s: %s", strings.Fields(lines[m.line()-1])[1], now))
		}
	}
	want := []string{"between(v: &&", "between(v: <", "between(v: >", "by(n: -", "by(n: 1", "isAbove(v: 0", "notMath(math: 5",
		"nought(): 0", "sum(): +", "sum(): 4"}
	slices.Sort(got)
	if !slices.Equal(got, want) {
		t.Errorf("changed are\n%q, want\n%q", got, want)
	}
	if !slices.ContainsFunc(drawn, func(m *mutant) bool { return m.operator == "return nothing" && m.function == "above" }) {
		t.Error("an infinite result is never left out")
	}
}

// TestAgain: by a log the survivors alone are found again, also where another line of their file is another now.
func TestAgain(t *testing.T) {
	o := small(t, ".")
	rooms, err := load(o.dir, o.patterns, "")
	if err != nil {
		t.Fatal(err)
	}
	all := rooms[0].mutants()
	want := []string{all[3].key(), all[5].key()}
	line := all[3].line()
	log := killed + "\t" + all[0].key() + "\tsmall TestX\n" + survived + "\t" + all[3].key() + "\t\n" +
		unseen + "\t" + all[5].key() + "\t\n" + survived + "\tgone.go\tF\tx\t0\ta\tb\t\n"
	text := rooms[0].files[0].text
	rooms[0].files[0].text = append([]byte("// A line more.\n"), text...)
	if err := rooms[0].parse(); err != nil {
		t.Fatal(err)
	}
	got, err := again(rooms, log)
	if err != nil {
		t.Fatal(err)
	}
	if len(got) != 2 || got[0].key() != want[0] || got[1].key() != want[1] || got[0].line() != line+1 {
		t.Errorf("%d found", len(got))
	}
}

// TestEquivalents: the file that stands beside this one is read, and a line that lacks its reason is refused.
func TestEquivalents(t *testing.T) {
	if _, err := equivalents(equivalentText); err != nil {
		t.Error(err)
	}
	if _, err := equivalents("# a line\n\na.go\tF\tx < y\t2\t<\t<=\tboth are the same there"); err != nil {
		t.Error(err)
	}
	for _, bad := range []string{"a.go\tF\tx < y\t2\t<\t<=\t", "a.go\tF\tx < y\t2\t<\t<=", "a.go F"} {
		if _, err := equivalents(bad); err == nil {
			t.Errorf("%q is taken", bad)
		}
	}
}

// TestRefused: what cannot be run is said.
func TestRefused(t *testing.T) {
	for _, c := range []struct {
		o    options
		want string
	}{
		{options{}, "give the packages to change"},
		{options{patterns: []string{"."}, equivalent: "a"}, "equivalent.txt, line 1"},
	} {
		if err := mutate(c.o, &strings.Builder{}); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%v: %v", c.o, err)
		}
	}
}
