//! What the help says that is not made from the list of commands.

use crate::gui::view_state::Workspace;

/// What a workspace is for, in some sentences.
pub(super) fn about(workspace: Workspace) -> &'static str {
    match workspace {
        Workspace::Job => {
            "Say which vehicle it is and how large, who brought it and what they want, and who works on it. A new job begins \
             with the crew and the rules of the shop. A vehicle that is not in the list can be made from one that is: cut or \
             join its panels and save it as one of your own."
        }
        Workspace::Survey => {
            "Type what the gauge shows and press Enter; the next spot lights up, once round the whole vehicle. A gauge that \
             types like a keyboard needs nothing else. Readings can also come from a CSV file or be pasted. Choose a panel and \
             draw its defects on the map."
        }
        Workspace::Correction => {
            "For each panel it says what may go, what has to go, and what will. What may go rests on the thinnest film that is \
             likely, not on the mean. Choose a goal, look at the open points, polish a test spot and enter what it showed: the \
             plan then rests on this paint."
        }
        Workspace::Coating => {
            "Enter the coating, the air and the coldest panel. It says whether the air allows the work, how long the coating may \
             wait, and in which order the two of you go round so that nobody is in the other's way. Accept the order to keep it \
             with the job."
        }
        Workspace::Bay => {
            "Start the day and tap Done after each step. It shows what comes next and which windows run, and plans again from \
             what really happened. Every tap is written beside the job, so an empty battery loses nothing."
        }
        Workspace::Handover => {
            "The sheet for the customer, cards for the crew, and the record for the next visit, as they will be printed. The big \
             screen plays the plan over the vehicle for a customer."
        }
        Workspace::Practice => {
            "An apprentice lays an order panel by panel, sees it played, and reads what goes wrong and why. Results are kept \
             under the apprentice's name on this computer only."
        }
    }
}

/// Keys that belong to one place, each with what it does there.
pub(super) const LOCAL: &[(&str, &[(&str, &str)])] = &[
    (
        "On the map",
        &[
            ("Arrow keys", "Go from panel to panel along the seams."),
            ("Enter", "Chooses the panel, or lets it go."),
            ("Shift and click", "Chooses one more panel."),
            ("Mouse wheel", "Zooms; dragging moves the map, two quick clicks fit it."),
        ],
    ),
    (
        "In Survey",
        &[
            ("Digits, then Enter", "Takes a reading."),
            ("Backspace", "Takes the last digit back; without digits, the last reading."),
            ("S", "Leaves this spot for later."),
            ("R", "Measures this spot again."),
            ("B", "Goes back to the first spot that was skipped."),
            ("D", "Draws defects; then 1, 2, 3 choose point, line, area and a letter the kind."),
        ],
    ),
    ("In Practice", &[("Backspace", "Takes the last step back."), ("H", "Says a reason.")]),
    ("In tables and lists", &[("Up and down", "Go from row to row."), ("Enter", "Opens the row.")]),
];

/// What holds for all work with this program.
pub(super) const CAUTIONS: &[&str] = &[
    "Clear coat that is gone can't be put back. What the program allows is a bound from the readings you gave; edges, body lines \
     and repairs are thinner. Try on a small place, measure again, and stop when in doubt.",
    "A gauge that shows the whole film can't see how much of it is clear coat. A gauge for metal shows nothing on plastic.",
    "Makers' sheets for coatings, polishes and machines come before anything shown here; so do local rules for solvents, dust, \
     ventilation, noise and vibration, and what a licensed painter says.",
    "Sanding dust and solvent vapour harm the lungs, vibration the hands, noise the ears. Use the mask, the gloves and the ear \
     protection that the sheets name, air the bay, and keep sparks away from solvents.",
    "Keep water, heat and machines away from damaged high-voltage parts until somebody licensed for them has looked.",
];
