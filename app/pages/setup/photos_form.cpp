#include "app/pages/setup/photos_form.h"

#include "app/pages/prompts.h"
#include "app/pages/setup/panel_parts.h"
#include "app/pages/setup/photo_bringing.h"
#include "app/widgets/parts.h"
#include "app/widgets/photo_cover.h"
#include "app/widgets/photo_tile.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/day_words.h"
#include "app/wording/formats.h"
#include "app/wording/photo_words.h"
#include "core/day_entry.h"

#include <QKeyEvent>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace rig {

PhotosForm::PhotosForm(Prompts& prompts) : EntryForm{PhotoWords::save(), true}, m_prompts{prompts}
{
    setExplanation(PhotoWords::explanation());
    m_none = softLabel(PhotoWords::none());
    m_strip = new QWidget;
    m_tiles = new WrapLayout{12, false, m_strip};
    addWidget(m_none);
    addWidget(m_strip);
    m_bringing = new PhotoBringing{prompts};
    addField({"photoPicture", PhotoWords::pictureLabel(), {}, Field::PhotoPicture}, m_bringing, Width::Whole);
    bind(
        [this](PhotoEntry& entry) {
            if (const TakenPhoto* photo = m_bringing->waiting()) {
                entry.jpeg = QByteArray::fromStdString(photo->image.jpeg.bytes);
                entry.size = photo->size;
            }
        },
        [this](const PhotoEntry& entry) {
            const TakenPhoto photo{entry.size, {{entry.jpeg.toStdString()}}};
            m_bringing->show(entry.jpeg.isEmpty() ? nullptr : &photo);
        });
    m_kind = addChoice({"photoKind", PhotoWords::kindLabel(), {}, Field::PhotoKind});
    m_kind->addItem(PhotoWords::chooseKind());
    for (int i = 0; i <= static_cast<int>(PhotoOf::Access); ++i)
        m_kind->addItem(PhotoWords::kind(static_cast<PhotoOf>(i)));
    bind([this](PhotoEntry& entry) { entry.of = kindChosen(); },
         [this](const PhotoEntry& entry) {
             m_kind->setCurrentIndex(entry.of ? static_cast<int>(*entry.of) + 1 : 0);
         });
    day({"photoDay", PhotoWords::day(), DayWords::hint(), Field::PhotoDay}, &PhotoEntry::day);
    m_caution = labelOf({}, "caution", "photoCaution");
    addWidget(m_caution);
    line({"photoNote", PhotoWords::note(), PhotoWords::noteHint(), {}}, &PhotoEntry::note, Width::Whole);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &PhotosForm::explainKind);
    connect(m_bringing, &PhotoBringing::brought, this, [this] {
        showProblems({});
        emit edited();
        m_kind->setFocus();
    });
    connect(m_bringing, &PhotoBringing::refused, this, [this](const QString& sentence) {
        showProblems({{Field::PhotoPicture, sentence}});
        showStatus({});
    });
    for (QLineEdit* line : findChildren<QLineEdit*>())
        line->installEventFilter(this);
    explainKind();
}

void PhotosForm::explainKind()
{
    const auto kind = kindChosen();
    sayIn(m_caution, kind ? PhotoWords::caution(*kind) : QString{});
}

std::optional<PhotoOf> PhotosForm::kindChosen() const
{
    const int index = m_kind->currentIndex();
    return index > 0 ? std::optional{static_cast<PhotoOf>(index - 1)} : std::nullopt;
}

void PhotosForm::begin(const IdBytes& coupling, Day today)
{
    PhotoEntry entry;
    entry.day = QString::fromStdString(dayText(today));
    open(coupling, entry);
    explainKind();
}

void PhotosForm::setLook(const Look& look)
{
    m_look = look;
    for (auto* tile : findChildren<PhotoTile*>())
        tile->setLook(look);
}

void PhotosForm::display(const QString& coupling, const std::vector<PhotoRow>& rows, const ImageOf& imageOf)
{
    setTitle(PhotoWords::title(coupling));
    m_coupling = coupling;
    std::vector<Seen> seen;
    for (const PhotoRow& row : rows) {
        const auto known = std::ranges::find_if(
            m_seen, [&row](const Seen& one) { return one.row.photo.id == row.photo.id; });
        seen.push_back({row, known == m_seen.end() ? imageOf(row.photo.id) : known->picture});
    }
    m_seen = std::move(seen);
    while (QLayoutItem* item = m_tiles->takeAt(0)) {
        item->widget()->deleteLater();
        delete item;
    }
    for (std::size_t i = 0; i < m_seen.size(); ++i)
        addTile(m_seen[i], static_cast<int>(i));
    m_none->setVisible(m_seen.empty());
    m_strip->setVisible(!m_seen.empty());
}

void PhotosForm::addTile(const Seen& seen, int index)
{
    auto* one = new QWidget;
    auto* column = new QVBoxLayout{one};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    auto* tile = new PhotoTile{""};
    tile->setObjectName(QStringLiteral("photo%1").arg(index));
    tile->setLook(m_look);
    tile->setHeight(static_cast<int>(std::lround(96 * m_look.fonts.scale)));
    const QString kind = PhotoWords::kind(seen.row.photo.of);
    tile->setPhoto(seen.picture, seen.picture.isNull() ? PhotoWords::cannotBeShown() : kind,
                   PhotoWords::enlarge(PhotoWords::captionOf(seen.row.photo, seen.row.person)));
    auto* withdraw = panelButton("", PhotoWords::withdraw());
    withdraw->setObjectName(QStringLiteral("withdrawPhoto%1").arg(index));
    withdraw->setAccessibleName(PhotoWords::withdrawTitle(kind, m_coupling));
    column->addWidget(tile);
    column->addWidget(labelOf(Formats{}.day(seen.row.photo.day), "soft"));
    column->addWidget(withdraw);
    m_tiles->addWidget(one);
    one->show();
    connect(tile, &QAbstractButton::clicked, this, [this, seen] { enlarge(seen); });
    connect(withdraw, &QPushButton::clicked, this, [this, seen] { askWithdraw(seen); });
}

void PhotosForm::enlarge(const Seen& seen)
{
    new PhotoCover{
        *window(),
        {{seen.picture, PhotoWords::of(m_coupling, PhotoWords::captionOf(seen.row.photo, seen.row.person))}},
        {},
        m_look};
}

void PhotosForm::askWithdraw(const Seen& seen)
{
    m_prompts.askText(
        this, PhotoWords::withdrawTitle(PhotoWords::kind(seen.row.photo.of), m_coupling),
        PhotoWords::withdrawQuestion(), {},
        [this, photo = seen.row.photo.id](const QString& reason) { emit withdrawAsked(photo, reason); });
}

bool PhotosForm::pastes(const QKeyEvent& event)
{
    return event.matches(QKeySequence::Paste) && m_bringing->paste();
}

void PhotosForm::keyPressEvent(QKeyEvent* event)
{
    if (!pastes(*event))
        EntryForm::keyPressEvent(event);
}

// A picture in the clipboard is no text for a line.
bool PhotosForm::eventFilter(QObject* watched, QEvent* event)
{
    return event->type() == QEvent::KeyPress && pastes(*static_cast<QKeyEvent*>(event))
               ? true
               : EntryForm::eventFilter(watched, event);
}

} // namespace rig
