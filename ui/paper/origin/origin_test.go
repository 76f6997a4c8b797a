package origin

import (
	"regexp"
	"testing"

	"contralay/model/catalogue"
)

// An identity is sixteen digits in groups of four, another for other texts, for texts that run into one another, and for another origin.
func TestIdentities(t *testing.T) {
	o := Origin{whole: []byte("a")}
	all := map[string]string{}
	for what, id := range map[string]string{"nothing": o.Identity(), "a text": o.Identity([]byte("ab")),
		"two texts":     o.Identity([]byte("a"), []byte("b")),
		"the other way": o.Identity([]byte("b"), []byte("a")), "an empty one": o.Identity([]byte("")),
		"of another": Origin{whole: []byte("b")}.Identity()} {
		if !regexp.MustCompile(`^[0-9a-f]{4}(-[0-9a-f]{4}){3}$`).MatchString(id) || all[id] != "" {
			t.Errorf("%s is %s, as %s", what, id, all[id])
		}
		all[id] = what
	}
	if first := o.Identity([]byte("ab")); first != o.Identity([]byte("ab")) {
		t.Error("the same is another")
	}
	one, two := []catalogue.Correction{{}}, []catalogue.Correction{{}, {}}
	for want, o := range map[string]Origin{"no corrections": {}, "1 correction abc": {InForce: one, Corrections: "abc"},
		"2 corrections abc": {InForce: two, Corrections: "abc"}} {
		if got := o.Learned(); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	if got := short([32]byte{0xab, 0xcd, 1, 2, 3, 4, 5}); got != "abcd01020304" {
		t.Error(got)
	}
}
