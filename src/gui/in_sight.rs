//! What takes the focus comes into sight: the Tab key also goes to what is scrolled away.

use eframe::egui::accesskit::{Action, ActionRequest, TreeId};
use eframe::egui::{self, Event, Id};

/// Asks for what has the focus to be scrolled to, once, where a part of it is not to be seen. Called before anything is drawn.
pub(super) fn bring_focus_into_sight(ctx: &egui::Context) {
    let key = Id::unique("focus-in-sight");
    let focused = ctx.memory(egui::Memory::focused);
    if ctx.data(|d| d.get_temp(key)) == Some(focused) {
        return;
    }
    ctx.data_mut(|d| d.insert_temp(key, focused));
    let response = focused.and_then(|id| ctx.read_response(id));
    // What can be seen of it is where the pointer meets it.
    if let Some(there) = response.filter(|r| !r.interact_rect.expand(1.0).contains_rect(r.rect)) {
        let request = ActionRequest {
            action: Action::ScrollIntoView,
            target_tree: TreeId::ROOT,
            target_node: there.id.accesskit_id(),
            data: None,
        };
        ctx.input_mut(|input| input.events.push(Event::AccessKitActionRequest(request)));
        ctx.request_repaint();
    }
}
