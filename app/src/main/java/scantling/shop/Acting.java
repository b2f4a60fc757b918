package scantling.shop;

/** Takes acts one at a time, each inside a transaction; what cannot be done ends in a {@link Refusal}. */
final class Acting {
    private final Changes changes;
    private final Shelves shelves;

    Acting(Changes changes) {
        this.changes = changes;
        this.shelves = new Shelves(changes.rows());
    }

    Effect take(Act act) {
        if (act instanceof Act.Log log) {
            return new BenchActs(changes, shelves).take(log);
        } else if (act instanceof Act.AddJob job) {
            return jobs().add(job);
        } else if (act instanceof Act.ChangeJob job) {
            return jobs().change(job.job());
        } else if (act instanceof Act.EditText edit) {
            return jobs().edit(edit);
        } else if (act instanceof Act.AddClient client) {
            return jobs().add(client.client());
        } else if (act instanceof Act.ChangeClient client) {
            return jobs().change(client.client());
        }
        return takeStock(act);
    }

    private Effect takeStock(Act act) {
        RackActs rack = new RackActs(changes);
        if (act instanceof Act.PutOnRack put) {
            return rack.put(put.piece());
        } else if (act instanceof Act.ChangeOnRack change) {
            return rack.change(change.piece());
        } else if (act instanceof Act.TakeOffRack take) {
            return rack.take(take);
        } else if (act instanceof Act.PutSupply put) {
            return rack.put(put.supply());
        } else if (act instanceof Act.TakeSupply take) {
            return rack.takeSupply(take.id());
        } else if (act instanceof Act.Set set) {
            return set(set.setting());
        }
        return takeBack(act);
    }

    private JobActs jobs() {
        return new JobActs(changes, shelves);
    }

    private Effect set(Setting setting) {
        setting.section().fault(setting).ifPresent(fault -> {
            throw Refusal.of("%s cannot be \"%s\".".formatted(setting.id(), setting.value()), fault);
        });
        if (setting.value().isEmpty()) {
            changes.remove(ShopTable.SETTING, setting.id());
            return new Effect("set", setting.id() + " is as usual", "", setting.id());
        }
        changes.put(ShopTable.SETTING, Records.row(setting));
        return new Effect("set", "%s is %s".formatted(setting.id(), setting.value()), "", setting.id());
    }

    private Effect takeBack(Act act) {
        UndoActs undo = new UndoActs(changes, shelves);
        if (act instanceof Act.Undo back) {
            return undo.undo(back.act());
        }
        return undo.redo(((Act.Redo) act).act());
    }
}
