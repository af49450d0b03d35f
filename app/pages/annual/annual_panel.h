#pragma once

#include "app/blocks/blocks.h"
#include "app/pages/annual/annual_view.h"
#include "app/theme/theme.h"

#include <QFrame>

#include <optional>

class QVBoxLayout;

namespace rig {

class Pressable;

// A picture with what it says below.
struct PictureWithWords
{
    std::optional<PictureBlock> picture;
    QString name;
    QStringList sentences;
};

// One card below the ranked table. What it shows is made anew each time.
class AnnualPanel : public QFrame
{
    Q_OBJECT

public:
    // `legend` may be empty.
    AnnualPanel(const QString& title, const QString& legend, const char* objectName,
                QWidget* parent = nullptr);

    void setLook(const Look& look);
    void showPictures(const std::vector<PictureWithWords>& pictures);
    // `none` stands where there are no stories, `hint` below them where there are.
    void showStories(const std::vector<AnnualStory>& stories, const QString& none, const QString& hint = {});
    void showSentences(const QStringList& sentences);
    QList<Pressable*> links() const;
    QString linkTo(const AnnualStory& story) const; // its name; of one that leads to a coupling

signals:
    void storyOpened(CouplingId coupling, const std::optional<ReadingId>& reading);

private:
    QVBoxLayout* begin();
    QWidget* storyOf(const AnnualStory& story);
    QWidget* linkOf(const AnnualStory& story);
    void fill(QWidget* whole, const AnnualStory& story) const;

    Look m_look;
    QVBoxLayout* m_layout = nullptr;
    QWidget* m_inside = nullptr;
};

} // namespace rig
