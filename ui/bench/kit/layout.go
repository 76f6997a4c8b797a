package kit

// Size is the room inside a pane.
type Size struct{ W, H int }

// Layout is where things go on a screen of a size. It is known before the contents
// are made, so that they are made for the room they have.
type Layout struct {
	W, H        int
	Head, Steps bool
	Top         bool // a rule with the title over the pane
	Sides       bool // panes have borders all round
	Left, Right Size // Right.W is 0 where there is no second pane
	Foot        int  // lines under the panes, the bar among them
	Margin      string
}

// Want is what a screen would like to have.
type Want struct {
	Wide    bool // one pane over the whole width
	Picture bool // the second pane is what is chosen by: it gets what the list can spare
	Foot    int  // lines under the panes, the bar among them
}

// Sizes where the frame changes. Below RoomyW × RoomyH there is one pane and no border
// at its sides and foot: on 40×12 the border would take four of the list's thirty-odd
// columns and one of its five lines, and the title in its rule parts it well enough.
// Below LeastW × LeastH what is left is a list and the bar.
const (
	RoomyW, RoomyH = 64, 16
	LeastW, LeastH = 20, 9
	footFrom       = 12 // height from which the foot has all its lines
)

// Widths of the second pane: room for a small section at least; at most so much that a
// round picture fills the height (a cell is twice as high as wide) with its caption.
const (
	pictureLeast, pictureMost = 28, 74
	listLeast                 = 72 // what the columns of a list can use
	chooseLeast               = 48 // what a list needs whose rows are told apart by the picture
)

// Arrange lays out a screen: a pure function, so that its tests are small drawings.
func Arrange(w, h int, want Want) Layout {
	w, h = max(w, 0), max(h, 0)
	l := Layout{W: w, H: h, Foot: max(want.Foot, 0), Head: h >= 4, Steps: h >= 7, Top: h >= 8}
	if w >= RoomyW {
		l.Margin = " "
	}
	if h < footFrom {
		l.Foot = min(l.Foot, 3)
	}
	if h < LeastH {
		l.Foot = min(l.Foot, 1)
	}
	l.Foot = min(l.Foot, h)
	room := h - l.Foot
	for _, line := range []bool{l.Head, l.Steps, l.Top} {
		if line {
			room--
		}
	}
	l.Sides = w >= RoomyW && h >= RoomyH
	if !l.Sides {
		l.Left = Size{w, max(room, 0)}
		return l
	}
	room = max(room-1, 0) // the lower border
	l.Left = Size{w - 2, room}
	if !want.Wide {
		outer := min(max(pictureLeast, w-listLeast, w*7/20), pictureMost, max(pictureLeast, room*2+8))
		if want.Picture {
			outer = min(max(pictureLeast, room*2+6), max(pictureLeast, w-chooseLeast))
		}
		l.Left.W, l.Right = w-outer-2, Size{outer - 2, room}
	}
	return l
}
