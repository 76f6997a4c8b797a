package question_test

import (
	"strings"
	"testing"

	"contralay/model/catalogue"
	"contralay/ui/question"
)

func read(t *testing.T, terms question.Terms, args ...string) (question.Question, error) {
	t.Helper()
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	if terms.Ratio == 0 {
		terms.Ratio = 12
	}
	return question.Read(args, terms, cat)
}

// The strip of sixteen of 22 AWG, 1.09 mm. The OD of each count is 1.09 times what the table of equal wires of the geometry
// notes gives at ratio 12: 4.000 up to 10, 4.155 up to 12, 4.414 up to 14, 4.701 up to 16, 5.023 up to 19, then 6.000. Which
// tube goes on is that of the plan's own table.
const sixteen = `
size 22                              OD mm sheath  lay-up
   8  ####################             4.4    1/4  2 . 7
   9  ####################             4.4    1/4  2 . 7
  10  ####################             4.4    1/4  2 . 8
  11  #####################            4.5    1/4  3 . 8
  12  #####################            4.5    1/4  3 . 9
  13  ######################           4.8    1/4  4 . 9
  14  ######################           4.8    1/4  4 . 10
  15  ########################         5.1    3/8  5 . 10      tube 3/8
= 16  ########################         5.1    3/8  5 . 11
  17  #########################        5.5    3/8  1 . 6 . 11  layer
  18  #########################        5.5    3/8  1 . 6 . 11
  19  #########################        5.5    3/8  1 . 6 . 12
  20  ##############################   6.5    3/8  2 . 8 . 13
  21  ##############################   6.5    3/8  2 . 8 . 13
  22  ##############################   6.5    3/8  2 . 8 . 13
  23  ##############################   6.5    3/8  2 . 8 . 13
  24  ##############################   6.5    3/8  2 . 8 . 14
The 17th starts a new layer: OD 5.5 mm. With 2 fewer it is 4.8 mm, in tube
1/4.
`

func TestStripOfSixteen(t *testing.T) {
	q, err := read(t, question.Terms{Centres: "unequal"}, "16x22")
	if err != nil {
		t.Fatal(err)
	}
	if got := q.Strip(true); got != sixteen {
		t.Errorf("got %s", got)
	}
	for _, line := range strings.Split(q.Strip(false), "\n") {
		if strings.Contains(line, "#") || len([]rune(line)) > 76 {
			t.Errorf("%q", line)
		}
	}
	if !strings.Contains(q.Strip(false), "  15  ███████████████████████▌         5.1") { // 5.124 of 6.540 are 23.5 of 30 cells
		t.Errorf("got %s", q.Strip(false))
	}
}

// Sizes that are typed twice are counted together, and a size in mm is named as it is typed.
func TestStripOfTypedSizes(t *testing.T) {
	q, err := read(t, question.Terms{Centres: "unequal"}, "4x1.5mm", "1x22", "3x1.5mm")
	if err != nil {
		t.Fatal(err)
	}
	got := q.Strip(true)
	for _, want := range []string{"size 1.5 mm ", "\n=  7  ", "\n   0  "} {
		if !strings.Contains(got, want) {
			t.Errorf("%q is not in %s", want, got)
		}
	}
}

// A centre that is asked for stays: four of 20 AWG in the centre are there with each count, and a question that has no
// lay-up has no strip.
func TestStripKeepsTheCentre(t *testing.T) {
	q, err := read(t, question.Terms{Centres: "unequal", Centre: "4x20"}, "10x20", "6x22")
	if err != nil {
		t.Fatal(err)
	}
	got := q.Strip(true)
	if strings.Contains(got, "\n   3  ") || !strings.Contains(got, "\n   4  ") {
		t.Errorf("it goes below what the centre holds: %s", got)
	}
	for _, line := range strings.Split(got, "\n")[2:8] {
		if !strings.Contains(line, "  4 . ") && !strings.Contains(line, "no lay-up") {
			t.Errorf("%q has another centre", line)
		}
	}
	none, err := read(t, question.Terms{Centres: "unequal", Layers: 9}, "7x22")
	if err != nil {
		t.Fatal(err)
	}
	if got := none.Strip(true); got != "" {
		t.Errorf("seven in nine layers: %q", got)
	}
}

// What is typed wrongly is named, with what is allowed.
func TestReadRefuses(t *testing.T) {
	for _, c := range []struct {
		terms question.Terms
		arg   string
		says  []string
	}{
		{question.Terms{}, "22", []string{`"22"`, "32x22", "1 to 500"}}, {question.Terms{}, "3x99", []string{"no size 99", "22"}},
		{question.Terms{}, "3x0.01mm", []string{"0.1 to 50 mm"}}, {question.Terms{Centre: "6"}, "9x22", []string{`--centre "6"`, "1 to 5"}},
		{question.Terms{Centre: "3x20"}, "9x22", []string{"3x20", "have 0"}},
		{question.Terms{Centre: "2x22,1x20,1x18"}, "9x22", []string{"--centre", "have 0"}},
	} {
		_, err := read(t, c.terms, c.arg)
		for _, want := range c.says {
			if err == nil || !strings.Contains(err.Error(), want) {
				t.Errorf("%s %+v: %v lacks %q", c.arg, c.terms, err, want)
			}
		}
	}
}
