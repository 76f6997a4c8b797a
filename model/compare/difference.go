package compare

// Kind is what became of a thing from the first list to the second.
type Kind string

// The kinds.
const (
	Added   Kind = "added"   // the second alone has it
	Removed Kind = "removed" // the first alone has it
	Moved   Kind = "moved"   // an end is in another cavity
	Swapped Kind = "swapped" // two changed places
	Changed Kind = "changed" // something about it is other
)

// Difference is one difference of two lists.
type Difference struct {
	Kind     Kind     `json:"kind"`
	Of       string   `json:"of"`                 // wire, net, cavity, unit, fuse or termination; of two files any table else
	Wires    []string `json:"wires,omitempty"`    // ids in the first list; of what is added, in the second
	Cavities []string `json:"cavities,omitempty"` // TERMINATION:CAVITY, by the names of the first list where it has them
	What     string   `json:"what,omitempty"`     // what changed: colour, size …
	Was      string   `json:"was,omitempty"`
	Is       string   `json:"is,omitempty"`
	Says     string   `json:"says"` // the whole in a sentence
}

// String is the sentence.
func (d Difference) String() string { return d.Says }

// quoted is a value as a message shows it, "none" where there is none.
func quoted(s string) string {
	if s == "" {
		return "none"
	}
	return s
}
