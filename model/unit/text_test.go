package unit

import (
	"errors"
	"math"
	"strconv"
	"strings"
	"testing"
)

func TestParseNumber(t *testing.T) {
	for _, c := range []struct {
		text string
		want float64
		err  error
	}{
		{"1.11", 1.11, nil}, {"1,11", 1.11, nil}, {" 12 ", 12, nil}, {".5", 0.5, nil}, {"5.", 5, nil}, {"-3", -3, nil}, {"+3", 3, nil},
		{"3/8", 0.375, nil}, {"1 3/8", 1.375, nil}, {"-1 1/2", -1.5, nil}, {"10.8/10", 1.08, nil}, {"10,5/10", 1.05, nil},
		{"", 0, ErrEmpty}, {"  ", 0, ErrEmpty}, {"1.2.3", 0, ErrTwoMarks}, {"1,234.5", 0, ErrTwoMarks},
		{"abc", 0, ErrNotANum}, {"1e3", 0, ErrNotANum}, {"NaN", 0, ErrNotANum}, {"inf", 0, ErrNotANum}, {"1-2", 0, ErrNotANum},
		{"1/0", 0, ErrNotANum}, {"a/b", 0, ErrNotANum}, {"1.5 1/2", 0, ErrNotANum}, {"1.5/0", 0, ErrNotANum}, {"1/1.5", 0, ErrNotANum},
		{"1.2.3/4", 0, ErrNotANum}, {".", 0, ErrNotANum}, {"-", 0, ErrNotANum},
	} {
		got, err := ParseNumber(c.text)
		if !errors.Is(err, c.err) || got != c.want {
			t.Errorf("%q: %v %v, want %v %v", c.text, got, err, c.want, c.err)
		}
	}
}

func TestPrint(t *testing.T) {
	for _, c := range []struct {
		got, want string
	}{
		{MM.Diameter(7.65), "7.7"}, {MM.Diameter(0.04), "0.0"}, {MM.Diameter(-0.04), "0.0"}, {MM.Fine(1.005), "1.01"},
		{MM.Fine(-0.42), "-0.42"},
		{MM.Length(449.5), "450"}, {Inch.Diameter(25.4), "1.000"}, {Inch.Length(25.4), "1"}, {Inch.Length(9.525), "3/8"},
		{Inch.Length(450), "17 11/16"},
		{Inch.Length(-9.525), "-3/8"}, {Fixed(2.675, 2), "2.68"}, {Fixed(math.Copysign(0, -1), 1), "0.0"},
	} {
		if c.got != c.want {
			t.Errorf("%q, want %q", c.got, c.want)
		}
	}
}

func TestRounding(t *testing.T) {
	for _, c := range []struct{ got, want float64 }{
		{RoundHalfUp(5.475, 0.01), 5.48}, {RoundHalfUp(2.675, 0.01), 2.68}, {RoundHalfUp(2.6749, 0.01), 2.67}, {RoundHalfUp(62.5, 5), 65},
		{UpTo(430, 10), 430}, {UpTo(430.1, 10), 440}, {UpTo(430.0000001, 10), 430}, {UpTo(0, 10), 0}, {UpTo(7, 0), 7},
	} {
		if math.Abs(c.got-c.want) > 1e-9 || math.Signbit(c.got) {
			t.Errorf("%v, want %v", c.got, c.want)
		}
	}
}

// Whatever is typed, a number comes out finite or not at all.
func FuzzParseNumber(f *testing.F) {
	for _, s := range []string{"1.5", "1,5", "3/8", "1 3/8", "-", "1e400", strings.Repeat("9", 400), "½", "-0 1/2", "-1 3/8", "+2",
		"-10.8/10",
		strings.Repeat("9", 308), "0" + strings.Repeat("0", 400) + "1", "5e-324", "0." + strings.Repeat("0", 330) + "1", " 1 ", "1 /2"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		v, err := ParseNumber(s)
		for _, system := range []System{MM, Inch} {
			if mm, err := system.Parse(s); err == nil && !Finite(float64(mm)) {
				t.Errorf("%q gives %v in %s", s, mm, system.Name())
			}
		}
		if err != nil {
			if v != 0 {
				t.Errorf("%q gives %v beside %v", s, v, err)
			}
			return
		}
		if minus := strings.HasPrefix(strings.TrimSpace(s), "-"); !Finite(v) || minus && v > 0 || !minus && v < 0 {
			t.Errorf("%q gives %v", s, v)
		}
		// The shortest decimal that names the number is read as the number, with either mark.
		text := strconv.FormatFloat(v, 'f', -1, 64)
		for _, again := range []string{text, strings.Replace(text, ".", ",", 1)} {
			if got, err := ParseNumber(again); err != nil || got != v {
				t.Errorf("%q gives %v, which is written %q and read %v, %v", s, v, again, got, err)
			}
		}
	})
}

// What is rounded has no more digits than it was rounded to: 189 × 0.01 is a hair over 1.89.
func TestRoundedValuesAreShort(t *testing.T) {
	for n := range 2000 {
		v := Written(Millimetre(float64(n)/100 + 0.0031))
		if got, want := strconv.FormatFloat(float64(v), 'f', -1, 64), strconv.FormatFloat(float64(n)/100, 'f', -1, 64); got != want {
			t.Fatalf("%s, want %s", got, want)
		}
	}
	if Written(-1.894) != -1.89 || Written(1.895) != 1.9 || Written(0) != 0 {
		t.Error(Written(-1.894), Written(1.895))
	}
	for text, want := range map[string]Millimetre{"0.3": 7.62, "1.1": 27.94, "0.0435": 1.105, "-0.3": -7.62} {
		if got, err := Inch.Parse(text); got != want || err != nil {
			t.Errorf("%s in is %v mm: %v", text, got, err)
		}
	}
}
