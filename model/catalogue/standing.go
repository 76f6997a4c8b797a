package catalogue

// Standing says how far a value can be trusted, best first.
type Standing string

// The four standings. House is measured in this shop, published was read in the
// named document, practice is common practice without a source, memory was
// recalled from the named document and not verified.
const (
	House     Standing = "house"
	Published Standing = "published"
	Practice  Standing = "practice"
	Memory    Standing = "memory"
)

// Rank orders standings: 0 is the best. An unknown word ranks last.
func (s Standing) Rank() int {
	switch s {
	case House:
		return 0
	case Published:
		return 1
	case Practice:
		return 2
	}
	return 3
}

// Known reports whether s is one of the four words.
func (s Standing) Known() bool { return s.Rank() < 3 || s == Memory }

// Weakest returns the weaker of two standings.
func Weakest(a, b Standing) Standing {
	if b.Rank() > a.Rank() {
		return b
	}
	return a
}

// Origin is where an entry comes from.
type Origin struct {
	Source   string
	Standing Standing
}
