// Package visible keeps the text of a file, of a list or of a name from commanding a terminal,
// and from showing as another text than it is.
//
// Its words:
//
//   - command: a character that a terminal obeys or that changes how the text round it shows:
//     the controls of ISO 6429 (C0, delete, C1), the line and paragraph separators, the marks
//     of writing direction, and the signs of no width.
//   - joiner: ZWJ and ZWNJ. Between letters some scripts need them; in an id they would make
//     two ids look alike.
//   - shown: a command as a sign that prints: ␛ for escape, ␛[ for the C1 control that means
//     the same, <U+202E> for a mark of direction, <9B> for a byte that is no UTF-8.
//
// It knows no file and no key: who reads one says where a text stands.
package visible
