// Package spokenpins makes tables of the pins that people tell each other: in a chat, one message a pin, and in answers to the questions
// of a letter.
//
//	[10:41] Una: 1 brown supply            > pin A?
//	[10:41] Una: 2 blue earth              start signal, 16ga yellow
//	[10:42] Ole: go on                     > pin B?
//	[10:42] Una: 3 empty                   not used
//
// Messages that tell a whole wire are for package stamped.
package spokenpins
