#include "app/window/file_drop.h"

#include "app/widgets/question_cover.h"

#include <QApplication>
#include <QDropEvent>
#include <QMimeData>
#include <QTimer>
#include <QUrl>
#include <QWidget>

namespace rig {

namespace {

// Where exactly one file of ours is carried; empty otherwise.
QString carriedFile(const QMimeData& carried)
{
    const QList<QUrl> urls = carried.urls();
    if (urls.size() != 1)
        return {};
    const QString path = urls.constFirst().toLocalFile();
    return path.endsWith(QLatin1String{".rigband"}, Qt::CaseInsensitive) ? path : QString{};
}

bool isDragged(const QEvent& event)
{
    return event.type() == QEvent::DragEnter || event.type() == QEvent::DragMove ||
           event.type() == QEvent::Drop;
}

} // namespace

FileDrop::FileDrop(QWidget& window) : QObject{&window}, m_window{window}
{
    window.setAcceptDrops(true);
    QCoreApplication::instance()->installEventFilter(this);
}

bool FileDrop::eventFilter(QObject* watched, QEvent* event)
{
    if (!isDragged(*event))
        return false;
    const auto* widget = qobject_cast<QWidget*>(watched);
    if (!widget || widget->window() != &m_window)
        return false;
    auto* drop = static_cast<QDropEvent*>(event);
    const QString path = carriedFile(*drop->mimeData());
    if (path.isEmpty())
        return false;
    if (QApplication::activeModalWidget() || QuestionCover::standsOn(m_window)) {
        event->ignore(); // an answer is waited for
        return true;
    }
    drop->setDropAction(Qt::CopyAction);
    drop->accept();
    if (event->type() == QEvent::Drop) // whoever let go of it still waits for an answer
        QTimer::singleShot(0, this, [this, path] { emit dropped(path); });
    return true;
}

} // namespace rig
