#include "app/widgets/photo_cover.h"

#include "app/widgets/parts.h"
#include "app/wording/photo_words.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace rig {

namespace {

// As large as there is room, never larger than it was taken.
class PhotoPane : public QWidget
{
public:
    explicit PhotoPane(const QImage& picture) : m_picture{picture}
    {
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
        setMinimumSize(40, 40);
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        if (m_picture.isNull())
            return;
        QPainter painter{this};
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        const QSize room = size();
        QSize shown = m_picture.size();
        if (shown.width() > room.width() || shown.height() > room.height())
            shown.scale(room, Qt::KeepAspectRatio);
        const QPoint corner{(room.width() - shown.width()) / 2, (room.height() - shown.height()) / 2};
        painter.drawImage(QRect{corner, shown}, m_picture);
    }

private:
    QImage m_picture;
};

} // namespace

PhotoCover::PhotoCover(QWidget& over, const std::vector<Shown>& photos, const QString& key, const Look& look,
                       const QWidget* below)
    : QWidget{&over}, m_over{&over}, m_below{below}, m_before{over.window()->focusWidget()}, m_key{key}
{
    setObjectName("photoCover");
    setAccessibleName(PhotoWords::largeName());
    setFocusPolicy(Qt::StrongFocus);
    auto* whole = new QVBoxLayout{this};
    const int around = static_cast<int>(12 * look.fonts.scale);
    whole->setContentsMargins(around, around, around, around);
    whole->setSpacing(around / 2);
    auto* row = new QHBoxLayout;
    row->setSpacing(around);
    QStringList captions;
    for (const Shown& photo : photos) {
        auto* column = new QVBoxLayout;
        column->addWidget(new PhotoPane{photo.picture}, 1);
        const QString caption = photo.picture.isNull() ? PhotoWords::cannotBeShown() : photo.caption;
        column->addWidget(labelOf(caption, "strong", "photoCaption"));
        captions << caption;
        row->addLayout(column, 1);
    }
    whole->addLayout(row, 1);
    whole->addWidget(labelOf(PhotoWords::closeHint(), "soft"));
    setAccessibleDescription(captions.join(QLatin1Char('\n')));
    over.installEventFilter(this);
    place();
    show();
    raise();
    setFocus();
}

void PhotoCover::endOn(const QWidget& over)
{
    for (auto* cover : over.findChildren<PhotoCover*>(QString{}, Qt::FindDirectChildrenOnly))
        cover->end();
}

void PhotoCover::place()
{
    QRect where = m_over->rect();
    if (m_below)
        where.setTop(m_below->mapTo(m_over, QPoint{0, m_below->height()}).y());
    setGeometry(where);
}

void PhotoCover::end()
{
    if (std::exchange(m_isOver, true))
        return;
    if (hasFocus()) {
        const bool canHaveIt = m_before && m_before->isVisible() && m_before->isEnabled();
        (canHaveIt ? m_before : m_over)->setFocus();
    }
    hide();
    deleteLater();
}

bool PhotoCover::event(QEvent* event)
{
    switch (event->type()) {
    case QEvent::ShortcutOverride: { // Ctrl and Alt lead elsewhere as ever; no other key is of the page
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->modifiers() & (Qt::ControlModifier | Qt::AltModifier))
            return QWidget::event(event);
        event->accept();
        return true;
    }
    case QEvent::MouseButtonPress:
        event->accept();
        end();
        return true;
    case QEvent::MouseButtonRelease:
    case QEvent::MouseButtonDblClick:
    case QEvent::Wheel:
        event->accept();
        return true;
    default:
        return QWidget::event(event);
    }
}

bool PhotoCover::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_over && event->type() == QEvent::Resize && !m_isOver)
        place();
    if (watched == m_over && event->type() == QEvent::Hide)
        end();
    return false;
}

void PhotoCover::keyPressEvent(QKeyEvent* event)
{
    event->accept();
    const bool closes = event->key() == Qt::Key_Escape || event->key() == Qt::Key_Space || isEnter(*event) ||
                        (!m_key.isEmpty() && isKey(*event, m_key));
    if (closes && !event->isAutoRepeat())
        end();
}

// Nothing shines through: words over words could not be read.
void PhotoCover::paintEvent(QPaintEvent*)
{
    QPainter{this}.fillRect(rect(), QApplication::palette().color(QPalette::Window));
}

} // namespace rig
