package bench

import (
	"contralay/ui/bench/board"
	"contralay/ui/bench/board/runs"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/ends"
	"contralay/ui/bench/flat"
	"contralay/ui/bench/layers"
	"contralay/ui/bench/layers/ways"
	"contralay/ui/bench/lists"
	"contralay/ui/bench/several"
	"contralay/ui/bench/sheath"
	"contralay/ui/bench/tree"
	"contralay/ui/bench/values"
	"contralay/ui/bench/wires"
)

// The screens of the shell itself.
const (
	menuKind    desk.Kind = "menu"
	helpKind    desk.Kind = "help"
	quitKind    desk.Kind = "quit"
	whyKind     desk.Kind = "why"
	figuresKind desk.Kind = "figures"
	leftKind    desk.Kind = "unsaved work"
)

// steps are the steps of a branch, left to right. One more is one line here and its page.
var steps = []desk.Place{
	{Kind: wires.Step, Title: "Wires", Pane: "Wires", Help: "wires", Page: wires.WiresPage},
	{Kind: layers.Step, Title: "Layers", Pane: "Lay-up", Help: "layers", Page: layers.LayersPage, Beside: layers.Beside},
	{Kind: layers.FillStep, Title: "Fill", Pane: "Free places", Help: "fill", Page: layers.FillPage, Beside: layers.PlanUnits},
	{Kind: sheath.Step, Title: "Sheath", Pane: "Sheath and covers", Help: "sheath", Page: sheath.SheathPage},
	{Kind: board.Step, Title: "Build", Pane: "Build", Help: "build", Page: board.BuildPage, Print: board.Print},
}

// screens are the kinds of screen that open over a step. One more is one entry here and its
// file. An entry without a page is of screens that bring theirs along.
var screens = []desk.Place{
	// the shell
	{Kind: menuKind, Help: "start", Wide: true, Page: menuPage},
	{Kind: helpKind, Help: "wires", Wide: true, ReadOnly: true, Page: helpPage},
	{Kind: quitKind, Help: "start", Wide: true, Safe: true, Page: quitPage},
	{Kind: whyKind, Help: "why", Wide: true, Safe: true, ReadOnly: true},
	{Kind: figuresKind, Help: "why", Wide: true, ReadOnly: true},
	{Kind: leftKind, Help: "recovery", Wide: true, Safe: true},
	{Kind: desk.KindFileChanged, Help: "recovery", Wide: true, Safe: true},
	{Kind: desk.KindFile, Help: "lists", Wide: true, Safe: true, ReadOnly: true},
	{Kind: desk.KindChoice, Help: "wires", Safe: true, ReadOnly: true},

	// wires
	{Kind: desk.KindWire, Help: "wires", Page: wires.WirePage, Beside: wires.Advise},
	{Kind: wires.DutyKind, Help: "wires", Page: wires.DutyPage},
	{Kind: wires.JudgeKind, Help: "wires", Wide: true, ReadOnly: true, Page: wires.JudgePage},
	{Kind: wires.SizesKind, Help: "wires", Wide: true, Page: wires.SizesPage},
	{Kind: wires.FeedsKind, Help: "protection", Wide: true, Page: wires.FeedsPage},
	{Kind: wires.FeedKind, Help: "protection", Wide: true, Page: wires.FeedPage},

	// several wires
	{Kind: desk.KindSeveral, Help: "several", Wide: true, Page: several.Page, Onward: several.Onward, Escape: several.Leave,
		Leaves: "right changes the marked, Esc goes back"},
	{Kind: several.MarkedKind, Help: "several", Wide: true, Page: several.MarkedPage},
	{Kind: several.UnitKind, Help: "several", Wide: true, Page: several.UnitPage},
	{Kind: several.SpliceKind, Help: "several", Wide: true, Page: several.SplicePage},
	{Kind: desk.KindFrom, Help: "several", Wide: true, Page: several.FromPage},

	// layers
	{Kind: layers.LayerKind, Help: "layers"},
	{Kind: ways.Screen, Title: "what if", Help: "layers", Wide: true, ReadOnly: true, Page: layers.WaysPage, Beside: ways.Plan},
	{Kind: layers.CliffsKind, Help: "layers", Wide: true, ReadOnly: true, Page: layers.CliffsPage, Beside: layers.PlanStrip},

	// sheath
	{Kind: sheath.CoverKind, Help: "sheath"},
	{Kind: sheath.AddCoverKind, Help: "sheath", Safe: true, ReadOnly: true, Page: sheath.AddCoverPage},
	{Kind: sheath.BootKind, Help: "sheath", Page: sheath.BootPage},
	{Kind: sheath.ThreadingKind, Help: "sheath", Wide: true, ReadOnly: true, Page: sheath.ThreadingPage},
	{Kind: sheath.MarginsKind, Title: "temperature margins", Help: "sheath", ReadOnly: true, Page: sheath.MarginsPage},

	// tree
	{Kind: tree.BranchesKind, Help: "map", Wide: true, Lasting: true, Page: tree.BranchesPage,
		Escape: leaveBranches, Leaves: "Enter opens one, Esc opens the menu"},
	{Kind: tree.NeedsKind, Help: "map", Wide: true, Page: tree.NeedsPage},
	{Kind: tree.WayKind, Help: "map", Wide: true, Safe: true, ReadOnly: true, Page: tree.WayPage},
	{Kind: tree.SplitKind, Help: "map", Wide: true, Safe: true, ReadOnly: true, Page: tree.SplitPage},
	{Kind: tree.ChangeKind, Title: "change a branch", Help: "map", Wide: true, Safe: true, Page: tree.ChangePage},
	{Kind: tree.PlaceKind, Title: "place", Help: "map", Wide: true, Safe: true, Page: tree.PlacePage},
	{Kind: tree.EndsKind, Title: "terminations", Help: "ends", Wide: true, Page: tree.EndsPage},
	{Kind: tree.EndKind, Title: "termination", Help: "ends", Wide: true, Page: tree.EndPage},
	{Kind: tree.SplicesKind, Help: "ends", Wide: true, Page: tree.SplicesPage},
	{Kind: tree.SpliceKind, Help: "ends", Wide: true, Page: tree.SplicePage},
	{Kind: tree.ListsKind, Help: "ends", Wide: true, ReadOnly: true, Page: tree.ListsPage},

	// making things; nothing is in the harness before it is taken, so Backspace goes back
	{Kind: ends.AddKind, Title: "add", Help: "add", Wide: true, Safe: true, ReadOnly: true, Page: ends.AddPage},
	{Kind: ends.ConnectorKind, Help: "add", Wide: true, Safe: true, Page: ends.ConnectorPage, Backspace: ends.KeepForm,
		Leads: "keeps all"},
	{Kind: ends.GroupsKind, Help: "add", Wide: true, Safe: true, ReadOnly: true, Page: ends.GroupsPage},
	{Kind: ends.GroupKind, Help: "add", Wide: true, Safe: true, ReadOnly: true, Page: ends.GroupPage},
	{Kind: ends.DeviceKind, Help: "add", Wide: true, Safe: true, Page: ends.DevicePage, Backspace: ends.KeepForm, Leads: "keeps all"},
	{Kind: ends.SparesKind, Help: "add", Wide: true, Safe: true, Page: ends.SparesPage, Backspace: ends.KeepForm, Leads: "keeps all"},

	// ends
	{Kind: ends.InsertKind, Help: "connectors", Safe: true, ReadOnly: true, Page: ends.ChooseInsertPage, Picture: ends.ChosenFace},
	{Kind: ends.WhichKind, Help: "connectors", Safe: true, ReadOnly: true, Page: ends.WhichPage, Picture: ends.WhichFace},
	// every value of the file
	{Kind: desk.KindWholeFile, Title: "the file", Help: "more", Wide: true, Lasting: true, Page: values.FilePage},
	{Kind: desk.KindRecord, Help: "more", Wide: true, Page: values.RecordPage, Beside: values.Effect},
	{Kind: desk.KindRecords, Title: "list", Help: "more", Wide: true, Page: values.RecordsPage},
	{Kind: values.ItemsKind, Title: "list", Help: "more", Wide: true, Page: values.ItemsPage},

	// board
	{Kind: runs.RunKind, Title: "bench run", Help: "run", Wide: true, Safe: true, Unasked: true, Page: runs.RunPage,
		Backspace: runs.RunBack, Leads: "back", Strip: runs.Strip, Head: runs.Head, NoPoints: true, Ticks: true},
	{Kind: runs.WhoKind, Help: "signing", Wide: true, Safe: true, Unasked: true, Ticks: true, Page: runs.WhoPage,
		Head: runs.Head},
	{Kind: runs.StepsKind, Help: "signing", Wide: true, Page: runs.StepsPage, Head: runs.Head, NoPoints: true,
		Backspace: (*desk.Model).Back, Leads: "back"},
	{Kind: runs.SinceKind, Help: "run", Wide: true, Safe: true, Unasked: true, Ticks: true, Page: runs.SincePage, Head: runs.Head},
	{Kind: runs.SinceOneKind, Help: "run", Wide: true, Safe: true, Unasked: true, Ticks: true, Page: runs.SinceOnePage,
		Head: runs.Head},
	{Kind: board.LearnedKind, Title: "measured", Help: "run", Wide: true, Page: board.LearnedPage},

	// the drawing
	{Kind: desk.KindDrawing, Title: "drawing of the board", Help: "drawing", Page: flat.Page, Picture: flat.Picture},

	// lists
	{Kind: lists.ImportKind, Title: "wire list", Help: "lists", Wide: true, Safe: true, Page: lists.ImportPage, Backspace: lists.Unsay},
	{Kind: lists.TableKind, Title: "table of the list", Help: "lists", Wide: true, Safe: true, Page: lists.TablePage,
		Backspace: lists.Unsay},
	{Kind: lists.ToldKind, Title: "line of the report", Help: "lists", Wide: true, Safe: true, ReadOnly: true, Page: lists.ToldPage},
}

// firstRows are the ways to begin on an empty board.
func firstRows(m *desk.Model) []desk.Row { return append(ends.FirstRows(m), lists.ImportRow(m)) }
