#include "app/wording/photo_words.h"

#include "app/wording/formats.h"

namespace rig {

QString PhotoWords::kind(PhotoOf of)
{
    switch (of) {
    case PhotoOf::Locked:
        return tr("Locked");
    case PhotoOf::PartSeated:
        return tr("Part-seated, on purpose");
    case PhotoOf::Empty:
        return tr("Empty socket, on purpose");
    case PhotoOf::Access:
        break;
    }
    return tr("Access and hatch");
}

QString PhotoWords::caution(PhotoOf of)
{
    if (of != PhotoOf::PartSeated && of != PhotoOf::Empty)
        return {};
    return tr("Not on a flying day. Tag the cockpit. Full inspection afterwards.");
}

QString PhotoWords::refusal(PhotoRefusal refusal)
{
    switch (refusal) {
    case PhotoRefusal::CannotOpen:
        return tr("This file cannot be opened. Look whether it is still there and may be read, or copy it to "
                  "this computer first.");
    case PhotoRefusal::TooManyBytes:
        return tr("This file is larger than 40 MB. Save the picture smaller, then take it in.");
    case PhotoRefusal::NoPicture:
        return tr("This is no picture. Choose a JPEG, PNG, BMP or GIF file.");
    case PhotoRefusal::OtherFormat:
        return tr("This kind of picture cannot be read here. Save it as JPEG or PNG, then take it in.");
    case PhotoRefusal::PhoneFormat:
        return tr(
            "This picture is kept as HEIC, as many phones do, and cannot be read here. Send or export it "
            "from the phone as JPEG, or set the phone’s camera to its most compatible format.");
    case PhotoRefusal::TooManyPixels:
        return tr("This picture has more than 50 million pixels. Save it smaller, then take it in.");
    case PhotoRefusal::EdgeTooLong:
        return tr("This picture is longer than 20,000 pixels. Cut it to the coupling, then take it in.");
    case PhotoRefusal::CutShort:
        return tr("This file ends before its picture does: it was not copied whole. Copy it again from the "
                  "camera or the phone.");
    case PhotoRefusal::Unreadable:
        break;
    }
    return tr("This picture is damaged and cannot be read. Open it in another program, save it anew as JPEG, "
              "then take it in.");
}

QString PhotoWords::photos() { return tr("Photos"); }
QString PhotoWords::title(const QString& coupling) { return tr("Photos of %1").arg(coupling); }

QString PhotoWords::explanation()
{
    return tr("Of each kind the newest is shown beside the look and on Know this airframe. The place and the "
              "device that a camera writes into its pictures are left out of the file.");
}

QString PhotoWords::none() { return tr("No photo of this coupling yet."); }
QString PhotoWords::pictureLabel() { return tr("A further p&icture"); }
QString PhotoWords::chooseFile() { return tr("Choose a picture …"); }
QString PhotoWords::fileFilter() { return tr("Pictures (*.jpg *.jpeg *.png *.bmp *.gif);;All files (*)"); }
QString PhotoWords::dropHere() { return tr("Drop a picture here, or paste one (Ctrl+V)."); }
QString PhotoWords::kindLabel() { return tr("It &shows"); }
QString PhotoWords::chooseKind() { return tr("Choose what it shows"); }
QString PhotoWords::noKindYet()
{
    return tr(
        "Say what the picture shows: one that shows a part-seated joint and is told to be locked teaches "
        "the wrong thing.");
}
QString PhotoWords::day() { return tr("&Taken on"); }
QString PhotoWords::note() { return tr("N&ote"); }
QString PhotoWords::noteHint() { return tr("What somebody should look at, or nothing."); }
QString PhotoWords::save() { return tr("Keep this photo  (Enter)"); }

QString PhotoWords::waiting()
{
    return tr("This picture is not in the file yet. Say what it shows, then keep it.");
}

QString PhotoWords::waitingFirstOfSeveral()
{
    return tr(
        "The file holds moving pictures; this is the first of them, and it is not kept yet. Say what it "
        "shows, then keep it.");
}

QString PhotoWords::noPictureYet() { return tr("Choose, drop or paste a picture first."); }

QString PhotoWords::chooseWhoStates()
{
    return tr("Say first who states this: the list “Entered by” at the left.");
}

QString PhotoWords::notOneFile() { return tr("Bring one picture at a time."); }
QString PhotoWords::withdraw() { return tr("Withdraw this photo"); }

QString PhotoWords::withdrawTitle(const QString& kind, const QString& coupling)
{
    return tr("Withdraw: %1, %2").arg(coupling, kind);
}

QString PhotoWords::withdrawQuestion()
{
    return tr("Why? It is shown nowhere any more; the file keeps it with your reason.");
}

QString PhotoWords::isWithdrawn() { return tr("The photo is withdrawn."); }

QString PhotoWords::kept(const QString& kind, const QString& time)
{
    return tr("Kept at %1: %2.").arg(time, kind);
}

QString PhotoWords::captionOf(const Photo& photo, const std::string& person)
{
    const QString caption =
        tr("%1 · %2 · %3", "what the photo shows, day, person")
            .arg(kind(photo.of), Formats{}.day(photo.day), QString::fromStdString(person));
    return photo.note.empty()
               ? caption
               : tr("%1: %2", "caption of a photo, note").arg(caption, QString::fromStdString(photo.note));
}

QString PhotoWords::of(const QString& coupling, const QString& caption)
{
    return tr("%1 · %2", "coupling, caption of its photo").arg(coupling, caption);
}

QString PhotoWords::enlarge(const QString& caption)
{
    return tr("Photo: %1. Press to see it large.").arg(caption);
}
QString PhotoWords::enlargeHint() { return tr("Enter: see it large"); }
QString PhotoWords::largeName() { return tr("Photo, large"); }
QString PhotoWords::closeHint() { return tr("Esc closes the picture."); }
QString PhotoWords::cannotBeShown() { return tr("This photo cannot be shown: its picture is damaged."); }

QString PhotoWords::keyPhoto() { return tr("V", "key for the photo, large"); }
QString PhotoWords::lockedHere(const QString& key) { return tr("Locked (%1)").arg(key); }
QString PhotoWords::bothSides(const QString& key) { return tr("Both sides (%1)").arg(key); }

} // namespace rig
