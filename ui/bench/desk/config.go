package desk

import (
	"time"

	"contralay/calc/sheet"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/ui/bench/kit"
	"contralay/ui/draw"
)

// Config is what a bench is opened with and how it touches the world.
type Config struct {
	Doc     file.Document
	Path    string // "" until the harness has a name on disk
	Cat     *catalogue.Catalogue
	Known   *sheet.Sheet // of a bench that had this harness before: what is the same is not worked out again; nil where there was none
	Palette draw.Palette
	ASCII   bool
	Welcome bool   // a first start: the first screen says how to go on, until the first key
	Notice  string // said until the first key
	Run     bool   // it opens on a bench run
	Serial  string // of what is built; "" is the one that is not through
	Folder  string // what a file name without folder is in

	// Bounce is how long the same key is ignored after it was taken, RunBounce how long in a run a
	// second Enter is; 0 takes every key. Now is the clock they go by.
	Bounce, RunBounce time.Duration
	Now               func() time.Time

	// Search is how long the search for better lay-ups goes on by itself beside the
	// screen, by that clock; 0: it waits to be asked.
	Search time.Duration

	List      func(folder string) ([]kit.Entry, error) // what lies in a folder; nil: names are typed
	Save      func(path string, d file.Document) error
	Exists    func(path string) bool
	Changed   func(path string) bool                                          // somebody else wrote the file since it was read or saved
	Keep      func(d file.Document, dirty bool) error                         // told of every change, for the journal
	Look      func() bool                                                     // reads what other benches did; whether to take it
	Brought   func() file.Brought                                             // what they did since
	Barred    func() string                                                   // why no record may be changed here; "" where it may
	ListBytes func(path string) ([]byte, error)                               // reads a wire list
	WriteNew  func(path string, text []byte) error                            // writes a file that is not there yet
	Learn     func(c catalogue.Correction) (*catalogue.Catalogue, error)      // writes what the shop goes by; the catalogue with it
	Print     func(path string, s *sheet.Sheet, unsaved bool) (string, error) // writes the build sheet beside a file; "" is no file yet
	Unread    []Unread                                                        // unsaved work that cannot be read
	Left      []Left                                                          // unsaved work of benches that are gone, newest first
}

// Left is unsaved work that an earlier bench left behind.
type Left struct {
	Doc     file.Document
	When    string   // as a person says it
	Changed bool     // the harness's file was written since by somebody else
	Says    []string // what it has other than the file
	Discard func() error
}

// Unread is unsaved work that an earlier bench left behind and that cannot be read.
type Unread struct {
	Path    string
	Says    string // why not: "is torn"
	Discard func() error
}
