#include "app/window/draft_bar.h"

#include "app/widgets/parts.h"
#include "app/window/button_key.h"
#include "app/wording/draft_words.h"

#include <QApplication>
#include <QClipboard>
#include <QLabel>

namespace rig {

namespace {

constexpr qsizetype kMostShown = 400; // letters; the rest is copied with it

} // namespace

DraftBar::DraftBar(QWidget* parent) : MarkedBar{"draftBar", Tone::Caution, parent}
{
    mark(MarkShape::HalfDisc, Role::InkSoft);
    text().setTextInteractionFlags(Qt::TextSelectableByMouse);
    QPushButton* copy = buttonOf(DraftWords::copy(), "copyDrafts");
    copy->setToolTip(DraftWords::copyHint());
    pressOnControl(Qt::Key_Y, copy);
    connect(copy, &QPushButton::clicked, this,
            [this] { QApplication::clipboard()->setText(m_lines.join(QLatin1Char('\n'))); });
    add(copy);
    QPushButton* forget = buttonOf(DraftWords::forget(), "forgetDrafts");
    forget->setToolTip(DraftWords::forgetHint());
    pressOnControl(Qt::Key_D, forget);
    connect(forget, &QPushButton::clicked, this, &DraftBar::forget);
    add(forget);
}

void DraftBar::showFor(const QString& path)
{
    m_path = path;
    const auto kept = path.isEmpty() ? std::nullopt : keptDrafts(path);
    m_lines = kept ? kept->lines : QStringList{};
    QString lines = m_lines.join(QLatin1Char('\n'));
    if (lines.size() > kMostShown)
        lines = lines.left(kMostShown) + QChar{0x2026};
    say(kept ? DraftWords::typedAndNotSaved(kept->when, lines) : QString{});
}

void DraftBar::forget()
{
    forgetDrafts(m_path);
    showFor({});
}

} // namespace rig
